using System.Globalization;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Truth.Tests.Strength;

/// <summary>
/// Source: Haff GG, Triplett NT (eds) 2016, Essentials of Strength Training and Conditioning, 4th ed., Human Kinetics (rows 1 to 10
/// confirmed in two public prints; 11, 12, 15 from memory), and the NSCA Training Load Chart. R15 to R24 are the ids of the reference values.
/// </summary>
public class RepTableTruth
{
    /// <summary>R15, R16, R17: the load chart differs at twelve repetitions.</summary>
    [Fact]
    public void Both_columns()
    {
        var rows = Cases.Rows("strength/rep-max-table.csv");
        Assert.Equal(13, rows.Count);
        foreach (var (table, column, count) in new[] { (RepTable.Textbook, "percent_1rm_textbook", 13), (RepTable.LoadChart, "percent_1rm_load_chart", 11) })
        {
            var printed = rows.Where(row => row[column].Length > 0).ToList();
            Assert.Equal(count, printed.Count);
            Assert.All(printed, row => Assert.Equal(Number(row[column]), table.Percent((int)Number(row["reps"]))));
        }
        Assert.Equal((67m, 70m), (RepTable.Textbook.Percent(12), RepTable.LoadChart.Percent(12)));
    }

    /// <summary>Ours, no source: a straight line where nothing is printed.</summary>
    [Fact]
    public void Between_rows()
    {
        Assert.Equal(199m / 3, RepTable.Textbook.Percent(13), 20);
        Assert.Equal(197m / 3, RepTable.Textbook.Percent(14), 20);
        Assert.Equal(72.5m, RepTable.LoadChart.Percent(11));
        Assert.Throws<ArgumentOutOfRangeException>(() => RepTable.Textbook.Percent(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RepTable.Textbook.Percent(16));
        Assert.Throws<ArgumentOutOfRangeException>(() => RepTable.LoadChart.Percent(13));
    }

    /// <summary>R18. Source: the load chart's row of a maximum of 150.</summary>
    [Fact]
    public void The_row_of_150() => Assert.Equal(
        [150m, 142.5m, 139.5m, 135m, 130.5m, 127.5m, 124.5m, 120m, 115.5m, 112.5m, 105m],
        new[] { 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12 }.Select(repetitions => new Intensity(RepTable.LoadChart.Percent(repetitions)).Of(150)));

    /// <summary>R19. Source: public worked lines, which print 357 and 405.</summary>
    [Theory]
    [InlineData(275, 9, 357.14)]
    [InlineData(365, 4, 405.56)]
    public void A_maximum_by_the_table(int pounds, int repetitions, double expected) => Assert.Equal((decimal)expected, Math.Round(RepTable.Textbook.OneRepMax(pounds, repetitions), 2));

    /// <summary>R20, R21. Source: Zourdos MC et al. 2016, J Strength Cond Res 30(1):267-275; Helms ER et al. 2016, Strength Cond J 38(4):42-49; halves from memory.</summary>
    [Fact]
    public void Reserve_by_RPE()
    {
        var rows = Cases.Rows("strength/rir-scale.csv");
        Assert.Equal(10, rows.Count);
        foreach (var row in rows)
            foreach (var rpe in row["rpe"].Split('-'))
            {
                var range = ReserveScale.Of(new Rpe(Number(rpe)));
                if (row["rir_low"].Length == 0) Assert.Null(range);
                else Assert.Equal((Number(row["rir_low"]), Number(row["rir_high"]), rpe == "9.5"), (range!.Value.Least, range.Value.Most, range.Value.HasMoreLoad));
            }
        // Ours, no source: the half that no print has.
        Assert.Equal(new ReserveRange(3, 4), ReserveScale.Of(new Rpe(6.5m)));
        Assert.Null(ReserveScale.Of(new Rpe(4.5m)));
    }

    /// <summary>R22. Source: derived, the row of repetitions and reserve together; not a published table.</summary>
    [Fact]
    public void Repetitions_with_some_in_reserve()
    {
        var rows = Cases.Rows("strength/percent-by-reps-and-rir.csv");
        Assert.Equal(10, rows.Count);
        foreach (var row in rows)
            for (var reserve = 0; reserve <= 4; reserve++)
                if (row[$"rir{reserve}"] is { Length: > 0 } cell) Assert.Equal(Number(cell), RepTable.Textbook.Percent((int)Number(row["reps"]), reserve));
        Assert.Equal((83m, 90m, 75m), (RepTable.Textbook.Percent(5, 2), RepTable.Textbook.Percent(3, 1), RepTable.Textbook.Percent(8, 2)));
        Assert.Null(RepTable.Textbook.Percent(10, 6));
        Assert.Null(RepTable.Textbook.Percent(1, 16));
    }

    /// <summary>R23. Source: derived: 83 % of 120 kg are 99.6, and 100 with a step of 2.5.</summary>
    [Fact]
    public void A_load_for_repetitions_and_reserve()
    {
        var load = new Intensity(RepTable.Textbook.Percent(5, 2)!.Value).Of(120);
        Assert.Equal(99.6m, load);
        Assert.Equal(100m, LoadableTotals.Of(Bar.Men, PlateSet.GymKilograms).Load(load, LoadRounding.Nearest)!.Total);
    }

    /// <summary>R24. Source: trial protocol in J Hum Kinet 2024;91:87-103, table; halves are ours.</summary>
    [Theory]
    [InlineData(5, 5d)]
    [InlineData(6, 5d)]
    [InlineData(7, 2.5)]
    [InlineData(8, 0d)]
    [InlineData(9, -2.5)]
    [InlineData(10, -5d)]
    [InlineData(6.5, 2.5)]
    [InlineData(7.5, 0d)]
    [InlineData(8.5, 0d)]
    [InlineData(9.5, -2.5)]
    [InlineData(4.5, null)]
    public void The_next_set(double reported, double? change) => Assert.Equal((decimal?)change, NextSet.Change(new Rpe((decimal)reported)));

    /// <summary>By definition: back from the table's per cent are the table's repetitions.</summary>
    [Fact]
    public void Repetitions_at_a_per_cent()
    {
        foreach (var table in new[] { RepTable.Textbook, RepTable.LoadChart })
            for (var repetitions = 1; repetitions <= table.Most; repetitions++) Assert.Equal(repetitions, table.Repetitions(table.Percent(repetitions)));
        Assert.Equal((0, 5, 4, null), (RepTable.Textbook.Repetitions(100.1m), RepTable.Textbook.Repetitions(86), RepTable.Textbook.Repetitions(87.1m), RepTable.Textbook.Repetitions(64.9m)));
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
