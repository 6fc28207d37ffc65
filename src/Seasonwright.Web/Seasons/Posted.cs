namespace Seasonwright.Web.Seasons;

/// <summary>A form as it came back: nothing is missing, nothing is trusted.</summary>
internal sealed class Posted(IFormCollection form)
{
    /// <summary>Trimmed; "" when the field is not there.</summary>
    public string this[string field] => form[field].ToString().Trim();

    /// <summary>As typed.</summary>
    public string Raw(string field) => form[field].ToString();

    /// <summary>The gesture the form was made for; a form without one is a gesture of its own.</summary>
    public Guid Gesture => Guid.TryParse(form["gesture"], out var id) && id != Guid.Empty ? id : Guid.CreateVersion7();

    /// <summary>The file that was chosen, empty or not; null when none was.</summary>
    public IFormFile? File(string field) => form.Files.GetFile(field) is { FileName.Length: > 0 } file ? file : null;

    /// <summary>The file that was chosen, by its name without a folder and what it holds; null when none was.</summary>
    public async Task<(string Name, byte[] Bytes)?> FileAsync(string field)
    {
        if (File(field) is not { } file) return null;
        using var bytes = new MemoryStream();
        await file.CopyToAsync(bytes);
        return (Path.GetFileName(file.FileName), bytes.ToArray());
    }

    /// <summary>Fields whose name starts so, without that start.</summary>
    public IEnumerable<(string Name, string Value)> Starting(string start) =>
        form.Where(field => field.Key.StartsWith(start, StringComparison.Ordinal)).Select(field => (field.Key[start.Length..], field.Value.ToString().Trim()));
}
