using System.Net;
using System.Net.Http.Json;

namespace Seasonwright.Browser.Tests.Year;

/// <summary>What the workspace answers to somebody who typed into a form of the year.</summary>
public sealed class FormRefusalTests
{
    [Theory]
    [InlineData("""{"edit":"setMatch","match":{"id":"m","day":"2027-10-16","kickOff":"25:99"}}""", "Kick-off: '25:99' is no time of day. Times are written 18:30. Change it and save again; nothing was changed.")]
    [InlineData("""{"edit":"setTestDay","testDay":{"id":"t","day":null,"battery":"Jump"}}""", "Day: nothing that can be read is filled in. Fill it in and save again; nothing was changed.")]
    public async Task The_field_is_named_as_on_the_page(string edit, string sentence)
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        using var client = new HttpClient { BaseAddress = workspace.Address };
        using var year = await client.GetAsync("/year");
        var season = year.RequestMessage!.RequestUri!.AbsolutePath;
        using var content = new StringContent($$"""{"id":"{{Guid.NewGuid()}}","basedOn":1,"on":"season","act":"edit","edits":[{{edit}}]}""", System.Text.Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync($"{season}/gestures", content);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal([sentence], (await answer.Content.ReadFromJsonAsync<Refusal>())!.Refused);
    }

    private sealed record Refusal(IReadOnlyList<string> Refused);
}
