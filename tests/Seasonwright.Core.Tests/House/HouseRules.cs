using System.Reflection;
using System.Xml.Linq;
using Seasonwright.Core.Edits;

namespace Seasonwright.Core.Tests.House;

/// <summary>The rules of the house that a compiler does not keep.</summary>
public class HouseRules
{
    private static readonly Type[] CoreTypes = typeof(Edit).Assembly.GetTypes();

    /// <summary>What each project may point at; Core points at nothing.</summary>
    private static readonly Dictionary<string, string[]> MayReference = new(StringComparer.Ordinal)
    {
        ["Core"] = [],
        ["Wire"] = ["Core"],
        ["Solver"] = ["Core"],
        ["Documents"] = ["Core"],
        ["Store"] = ["Core"],
        ["Desk"] = ["Core", "Wire", "Solver", "Documents", "Store"],
        ["Web"] = ["Desk", "Documents", "Solver", "Core"],
        ["Cli"] = ["Desk", "Documents", "Solver", "Wire", "Core"],
    };

    private const string Mathematics = "MathNet.Numerics";

    private static readonly string[] OneRule =
        ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups", "Loads", "Strength", "Squad", "Edits", "Rules", "Rules.OfSeason", "Rules.OfBlock", "Rules.OfWeek", "Rules.OfDay", "Rules.OfAthlete"];

    /// <summary>What each folder of Core may see; the root (lists, sentences) is seen by all and sees none.</summary>
    private static readonly Dictionary<string, string[]> MaySee = new(StringComparer.Ordinal)
    {
        [""] = [],
        ["Calendar"] = [""],
        ["Quantities"] = [""],
        ["Facts"] = [""],
        ["Seasons"] = ["", "Calendar", "Quantities", "Facts"],
        ["Setups"] = ["", "Calendar", "Quantities", "Facts", "Seasons"],
        ["Loads"] = ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups"],
        ["Strength"] = ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups"],
        ["Rooms"] = ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups"],
        ["Squad"] = ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups", "Loads", "Strength"],
        ["Boards"] = ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups", "Strength", "Squad", "Edits"],
        ["Rules"] = ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups", "Loads", "Strength", "Squad", "Edits", "Rules.OfSeason", "Rules.OfBlock", "Rules.OfWeek", "Rules.OfDay", "Rules.OfAthlete"],
        ["Rules.OfSeason"] = OneRule,
        ["Rules.OfBlock"] = OneRule,
        ["Rules.OfWeek"] = OneRule,
        ["Rules.OfDay"] = OneRule,
        ["Rules.OfAthlete"] = OneRule,
        ["Edits"] = ["", "Calendar", "Quantities", "Facts", "Seasons", "Setups", "Strength", "Rooms"],
    };

    private static string FolderOf(Type type) => type.Namespace!["Seasonwright.Core".Length..].TrimStart('.');

    [Fact]
    public void Projects_point_inwards()
    {
        var projects = Directory.GetFiles(Ground.Source, "*.csproj", SearchOption.AllDirectories);
        Assert.NotEmpty(projects);
        foreach (var project in projects)
        {
            var name = Path.GetFileNameWithoutExtension(project)["Seasonwright.".Length..];
            var references = XDocument.Load(project).Descendants("ProjectReference")
                .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/'))["Seasonwright.".Length..]);
            Assert.True(MayReference.ContainsKey(name), $"The house has no room called {name}.");
            Assert.All(references, reference => Assert.Contains(reference, MayReference[name], StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Core_reads_in_the_order_of_its_references()
    {
        var seen = 0;
        foreach (var type in CoreTypes.Where(type => type.Namespace?.StartsWith("Seasonwright.Core", StringComparison.Ordinal) == true))
        {
            var folder = FolderOf(type);
            Assert.True(MaySee.ContainsKey(folder), $"Core has no folder called {folder}.");
            foreach (var other in References.TypesOf(type).Where(other => other.Assembly == type.Assembly && other.Namespace?.StartsWith("Seasonwright", StringComparison.Ordinal) == true).Select(FolderOf).Where(other => other != folder))
            {
                seen++;
                Assert.True(MaySee[folder].Contains(other, StringComparer.Ordinal), $"{type.FullName} sees {other}.");
            }
        }
        // The reader of the assembly does see: Edits alone names the seasons hundreds of times.
        Assert.True(seen > 300, $"{seen} references seen");
    }

    [Fact]
    public void Core_points_at_the_platform_at_time_zones_and_at_mathematics_only() =>
        Assert.All(typeof(Edit).Assembly.GetReferencedAssemblies(), assembly => Assert.True(
            assembly.Name is "NodaTime" or Mathematics || assembly.Name!.StartsWith("System.", StringComparison.Ordinal), assembly.Name));

    [Fact]
    public void Mathematics_is_where_strength_is() => Assert.Equal("Strength", Assert.Single(
        CoreTypes.Where(type => References.TypesOf(type).Any(other => other.Assembly.GetName().Name == Mathematics)).Select(FolderOf).Distinct(StringComparer.Ordinal)));

    [Fact]
    public void Core_asks_no_clock_no_chance_and_no_disk()
    {
        string[] forbidden = ["System.Random", "System.Environment", "System.TimeProvider", "System.Diagnostics.Stopwatch", "System.Console"];
        foreach (var type in CoreTypes)
        {
            // The compiler's own iterators ask for the thread they run on.
            foreach (var member in References.MembersOf(type).Where(member => member.DeclaringType is not null && member.Name != "get_CurrentManagedThreadId"))
            {
                var owner = member.DeclaringType!.FullName ?? "";
                Assert.False(member.Name is "get_Now" or "get_UtcNow" or "get_Today" or "NewGuid" or "CreateVersion7" or "get_CurrentCulture", $"{type.FullName} calls {owner}.{member.Name}");
                Assert.False(forbidden.Contains(owner, StringComparer.Ordinal) || owner.StartsWith("System.IO.", StringComparison.Ordinal) || owner.StartsWith("System.Net.", StringComparison.Ordinal), $"{type.FullName} uses {owner}");
            }
        }
    }

    [Fact]
    public void Core_has_no_public_type_that_changes()
    {
        foreach (var type in CoreTypes.Where(type => type.IsVisible && !type.IsInterface && !type.IsEnum))
        {
            foreach (var field in type.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
                Assert.True(field.IsInitOnly || field.IsLiteral, $"{type.FullName}.{field.Name} can be written.");
            foreach (var property in type.GetProperties())
            {
                var isInit = property.SetMethod?.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(System.Runtime.CompilerServices.IsExternalInit));
                Assert.True(isInit != false, $"{type.FullName}.{property.Name} can be set.");
                Assert.False(property.PropertyType.IsArray || IsMutable(property.PropertyType), $"{type.FullName}.{property.Name} gives a {property.PropertyType.Name} away.");
            }
        }

        static bool IsMutable(Type type) => type.IsGenericType && type.Namespace == "System.Collections.Generic" && !type.IsInterface;
    }

    [Fact]
    public void No_folder_is_a_drawer_for_anything()
    {
        string[] drawers = ["Common", "Shared", "Helpers", "Services", "Util", "Utils", "Utilities", "Misc"];
        foreach (var file in Ground.SourceFiles)
            Assert.DoesNotContain(Path.GetRelativePath(Ground.Source, file).Split(Path.DirectorySeparatorChar), part => drawers.Contains(part, StringComparer.OrdinalIgnoreCase) && !part.EndsWith(".cs", StringComparison.Ordinal));
    }

    [Fact]
    public void Names_say_what_a_thing_is()
    {
        foreach (var name in Ground.SourceFiles.Select(file => Path.GetFileNameWithoutExtension(file)))
            Assert.False(name.EndsWith("Manager", StringComparison.Ordinal) || name.EndsWith("Helper", StringComparison.Ordinal) || name.EndsWith("Helpers", StringComparison.Ordinal) || name.EndsWith("Util", StringComparison.Ordinal) || name.EndsWith("Utils", StringComparison.Ordinal), name);
    }

    [Fact]
    public void Edits_are_a_closed_family_of_values() => Assert.All(
        CoreTypes.Where(type => type.IsSubclassOf(typeof(Edit)) && !type.IsAbstract),
        type => Assert.True(type.IsSealed && type.GetConstructors(BindingFlags.Public | BindingFlags.Instance).Length == 1, type.FullName));
}
