namespace Seasonwright.Cli.Tests;

public class SessionTests
{
    /// <summary>With APPROVE=1 the answers of today are written down; read the difference before you commit it.</summary>
    [Theory]
    [MemberData(nameof(Cases.All), MemberType = typeof(Cases))]
    public void A_session_answers_as_it_was_approved(string name)
    {
        var file = Path.Combine(Cases.Folder, $"{name}.session");
        var approved = File.ReadAllText(file);
        var now = Cases.Replay(approved);
        if (Environment.GetEnvironmentVariable("APPROVE") == "1") File.WriteAllText(file, now);
        else Assert.Equal(approved, now);
    }
}
