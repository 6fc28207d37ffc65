namespace Seasonwright.Store.Tests;

/// <summary>Whatever stands in the database's place: a sentence or a log, never a raw exception, and the file as it was.</summary>
public sealed class DamageTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Theory]
    [InlineData("text", StoreTroubleKind.NotOurs)]
    [InlineData("foreign", StoreTroubleKind.NotOurs)]
    [InlineData("truncated", StoreTroubleKind.Damaged)]
    [InlineData("newer", StoreTroubleKind.Newer)]
    [InlineData("folder", StoreTroubleKind.Unreachable)]
    [InlineData("without its tables", StoreTroubleKind.Damaged)]
    public async Task A_file_we_cannot_open_is_refused_and_left_alone(string what, StoreTroubleKind kind)
    {
        await place.FillAsync();
        var whole = place.In("whole.db");
        File.Move(place.Database, whole);
        Damage.Make(what, whole, place.Database);
        var before = Bytes();

        var trouble = await Assert.ThrowsAsync<StoreTrouble>(async () => await place.SaidAsync());

        Assert.Equal((kind, place.Database), (trouble.Kind, trouble.Subject));
        Assert.Equal(before, Bytes());
        Assert.False(Directory.Exists(Path.Combine(place.Data, "backups")));
    }

    [Theory]
    [InlineData("UPDATE streams SET kind = 'Picnic'")]
    [InlineData("UPDATE streams SET created_utc = -5")]
    [InlineData("UPDATE log_entries SET instant_utc = 9223372036854775807")]
    [InlineData("UPDATE log_entries SET gesture_id = 'no id ' || number")]
    [InlineData("UPDATE log_entries SET author = NULL")]
    [InlineData("UPDATE __EFMigrationsHistory SET MigrationId = NULL")]
    [InlineData("DROP TABLE log_entries")]
    [InlineData("ALTER TABLE log_entries RENAME COLUMN author TO writer")]
    public async Task A_value_we_never_wrote_is_damage(string sql)
    {
        await place.FillAsync();
        using (var other = Sql.Open(place.Database))
        {
            Sql.Run(other, """
                DROP TRIGGER log_entries_never_change; DROP TRIGGER log_entries_go_only_with_a_tombstone;
                PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'NOT NULL', ''); PRAGMA writable_schema = RESET;
                """);
            Sql.Run(other, sql);
        }
        Assert.Equal(StoreTroubleKind.Damaged, (await Assert.ThrowsAsync<StoreTrouble>(() => place.SaidAsync())).Kind);
    }

    [Fact]
    public async Task An_empty_file_is_a_new_folder()
    {
        Directory.CreateDirectory(place.Data);
        Damage.Make("empty", "", place.Database);
        Assert.Empty(await place.SaidAsync());
    }

    [Fact]
    public async Task Damage_anywhere_ends_in_a_sentence_or_does_no_harm()
    {
        await place.FillAsync(20);
        var whole = await File.ReadAllBytesAsync(place.Database);
        var random = new Random(20270705);
        var kinds = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var round = 0; round < 100; round++)
        {
            var damaged = (byte[])whole.Clone();
            if (round % 3 == 0) damaged = damaged[..random.Next(1, damaged.Length)];
            else for (var spot = random.Next(1, 40); spot > 0; spot--) damaged[random.Next(damaged.Length)] = (byte)random.Next(256);
            await File.WriteAllBytesAsync(place.Database, damaged);
            string outcome;
            try
            {
                using var folder = await place.OpenAsync();
                await Sample.Said(folder);
                await folder.People.AllAsync();
                outcome = "opened";
            }
            catch (StoreTrouble trouble)
            {
                Assert.Contains(place.Database, trouble.Message, StringComparison.Ordinal);
                outcome = trouble.Kind.ToString();
            }
            catch (Exception raw)
            {
                throw new InvalidOperationException($"round {round}", raw);
            }
            kinds[outcome] = kinds.GetValueOrDefault(outcome) + 1;
            File.Delete(place.Database + "-wal");
            File.Delete(place.Database + "-shm");
        }
        TestContext.Current.SendDiagnosticMessage(string.Join(", ", kinds));
        Assert.True(kinds.ContainsKey(nameof(StoreTroubleKind.Damaged)));
    }

    private byte[] Bytes() => File.Exists(place.Database) ? File.ReadAllBytes(place.Database) : [];
}
