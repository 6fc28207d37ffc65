namespace Seasonwright.Store.Tests;

/// <summary>Files that stand where a database should.</summary>
internal static class Damage
{
    /// <param name="whole">A whole database of ours.</param>
    /// <returns><paramref name="file"/>, made as <paramref name="what"/> says.</returns>
    public static string Make(string what, string whole, string file)
    {
        switch (what)
        {
            case "missing":
                break;
            case "folder":
                Directory.CreateDirectory(file);
                break;
            case "empty":
                File.WriteAllBytes(file, []);
                break;
            case "text":
                File.WriteAllText(file, string.Concat(Enumerable.Repeat("date,opponent\n2027-09-04,Norcliff\n", 200)));
                break;
            case "foreign":
                File.Delete(file);
                Sql.Run(file, "CREATE TABLE recipes (name TEXT); INSERT INTO recipes VALUES ('bread')");
                break;
            case "truncated":
                File.WriteAllBytes(file, File.ReadAllBytes(whole)[..^8192]);
                break;
            case "newer":
                File.Copy(whole, file, overwrite: true);
                Sql.Run(file, "INSERT INTO __EFMigrationsHistory VALUES ('99991231235959_Future', '99.0.0')");
                break;
            case "without its tables":
                File.Delete(file);
                Sql.Run(file, "PRAGMA application_id = 1398239860; CREATE TABLE unrelated (x)");
                break;
            default:
                throw new ArgumentException($"No such damage: {what}.", nameof(what));
        }
        return file;
    }
}
