using System.Text;
using CsCheck;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Velocities;

namespace Seasonwright.Documents.Tests.Read;

public class VelocityReaderTests
{
    private static readonly VelocityPoint[] Points = [new(40, 1.12), new(62.5, 0.85)];

    [Theory]
    [InlineData("load,lift velocity\n40,1.12\n62.5,0.85\n")]
    [InlineData("velocity,load\r\n1.12,40\r\n0.85,62.5")]
    [InlineData("Load (kg);Mean velocity (m/s)\n40;1,12\n62,5;0,85\n")]
    [InlineData("sep=;\nlast;geschwindigkeit\n40;1,12\n62,5;0,85\n")]
    [InlineData("# one, two; \"three\n\n\tweight_kg\tmpv\n# a remark\n\t40\t1.12\n\t62.5\t.85\n")]
    [InlineData("athlete;mass;body mass;v\nIda;40 kg;63;1.12 m/s\nIDA;62.5;63;0.85\n\n")]
    [InlineData("kg|m/s\n40|1.12\n62.5|0.85")]
    public void However_a_list_is_written_it_says_the_same(string text)
    {
        var list = Read(text);
        Assert.Empty(list.Problems);
        Assert.Equal((MassUnit.Kilogram, Points), (list.Unit, [.. list.Points]), (one, other) => one.Item1 == other.Item1 && one.Item2.SequenceEqual(other.Item2));
    }

    [Fact]
    public void Pounds_are_told_by_the_heading() => Assert.Equal(MassUnit.Pound, Read("load (lb),velocity\n90,1.1\n").Unit);

    [Theory]
    [InlineData("40,1.12\n60,0.85\n", "velocity-columns", 1, null)]
    [InlineData("load,weight,velocity\n40,40,1.12\n", "velocity-columns", 1, null)]
    [InlineData("load,mean velocity,peak velocity\n40,1.12,1.5\n", "velocity-columns", 1, null)]
    [InlineData("# only\nload,velocity\n", "velocity-none", 2, null)]
    [InlineData("load,velocity\n40,1,12\n60,0,85\n", "velocity-cells", 2, 3)]
    [InlineData("load,velocity\n40,1.12\n\n60,quick\n", "velocity-number", 4, 2)]
    [InlineData("load,velocity\n40,1.12\n1e2,0.8\n", "velocity-number", 3, 1)]
    [InlineData("load,velocity\n90 lb,1.12\n", "velocity-number", 2, 1)]
    [InlineData("load (lb),velocity\n90 lbs,1.12\n41 kg,1.1\n", "velocity-number", 3, 1)]
    [InlineData("sep=;\n", "empty", null, null)]
    [InlineData("athlete,load,velocity\nIda,40,1.12\nBo,60,1\n", "velocity-several", 3, 1)]
    [InlineData("load,velocity,Lift\n40,1.12,squat\n60,1,\n", "velocity-several", 3, 3)]
    [InlineData("load,velocity\n40,\n", "velocity-missing", 2, 2)]
    [InlineData("load,velocity\n0,1.12\n", "velocity-beyond", 2, 1)]
    [InlineData("load,velocity\n-40,1.12\n", "velocity-beyond", 2, 1)]
    [InlineData("load,velocity\n40,112\n", "velocity-beyond", 2, 2)]
    [InlineData("load,velocity\n99999,1\n", "velocity-beyond", 2, 1)]
    [InlineData("# a remark\n", "empty", null, null)]
    [InlineData(" \n", "empty", null, null)]
    [InlineData("load,velocity\n40,\"1.12\n", "quote-open", 2, null)]
    public void What_is_wrong_is_told_with_its_place(string text, string id, int? line, int? column)
    {
        var list = Read(text);
        Assert.Empty(list.Points);
        var problem = Assert.Single(list.Problems);
        Assert.Equal((id, line, column), (problem.Id, problem.Line, problem.Column));
        Assert.DoesNotContain("{", problem.What + problem.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_bytes_are_read_or_told() => Gen.Select(
        Gen.OneOf("load,velocity\n", "velocity;load\n", "", "sep=;\n", "#\n"), Gen.OneOf(Gen.String[Gen.Char["0123456789.,;-# \n\t\"kgms/"], 0, 60], Gen.String)).Sample((heading, rows) =>
    {
        var list = VelocityReader.Read(SourceText.OfBytes("list.csv", Encoding.UTF8.GetBytes(heading + rows)));
        Assert.NotEqual(list.Points.Count > 0, list.Problems.Count > 0);
    }, iter: 5_000);

    private static VelocityList Read(string text) => VelocityReader.Read(SourceText.OfText("list.csv", text));
}
