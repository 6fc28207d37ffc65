namespace Seasonwright.Core.Squad;

/// <summary>Who reported, as whoever writes it down says.</summary>
public sealed record Reporter
{
    /// <summary>Longest name in characters.</summary>
    public const int LongestName = 80;

    /// <param name="isLicensedClinician">Whether the law lets the person decide on fitness to train where the team is; the program cannot know and takes the word of whoever records it.</param>
    /// <param name="name">Null where none is given.</param>
    /// <exception cref="ArgumentException">A coach or an athlete as a clinician: whoever is both reports as the clinician. Or a name too long.</exception>
    public Reporter(ReporterRole role, bool isLicensedClinician, string? name = null)
    {
        if (isLicensedClinician && role is ReporterRole.Coach or ReporterRole.Athlete) throw new ArgumentException("Coach and athlete report as such, never as clinicians.", nameof(isLicensedClinician));
        name = name?.Trim();
        if (name?.Length > LongestName) throw new ArgumentException($"A name of more than {LongestName} characters.", nameof(name));
        (Role, IsLicensedClinician, Name) = (role, isLicensedClinician, string.IsNullOrEmpty(name) ? null : name);
    }

    public ReporterRole Role { get; }

    public bool IsLicensedClinician { get; }

    public string? Name { get; }
}
