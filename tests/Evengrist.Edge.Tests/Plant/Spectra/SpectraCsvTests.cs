using Evengrist.Plant.Spectra;

namespace Evengrist.Edge.Tests.Plant.Spectra;

/// <summary>Spectra from tables of text.</summary>
public sealed class SpectraCsvTests
{
    [Theory]
    [InlineData("id,protein,w1100,w1102\na,11.5,0.31,3.2e-1\n", "nm")]
    [InlineData("sample;protein;1100 nm;1102\na;11.5;0.31;0.32\n", "nm")]
    [InlineData("# decimal: comma\nid;protein;1100 nm;1102 nm\na;11,5;0,31;0,32\n", "nm")]
    [InlineData("id,protein,6000 1/cm,6010 cm-1\na,11.5,0.31,0.32\n", "1/cm")]
    [InlineData("protein,X1,X2\n11.5,0.31,0.32\n", "channel")]
    public void Headings_InEveryForm_AreRead(string text, string unit)
    {
        var table = SpectraTable.Read(text).Value;
        Assert.Equal((unit, 2), (table.Axis.Unit, table.Axis.Count));
        Assert.Equal([0.31, 0.32], table.Rows[0].Values);
        Assert.Equal(["protein"], table.Columns);
    }

    [Theory]
    [InlineData("id,w1100,w1102\na,0.3,x\n", "line 2, column 3 (w1102): read \"x\"; expected a number")]
    [InlineData("id,w1100,w1102\na,0.3\n", "line 2, column 3 (w1102): read nothing; expected a number such as 0.3284: the spectrum ends after column 2")]
    [InlineData("id,w1100,w1102\na,0.3,NaN\n", "line 2, column 3")]
    [InlineData("id,protein\na,11\n", "No channels are named")]
    [InlineData("id,w1100,X2\na,1,2\n", "Channels stand in one unit")]
    [InlineData("id,w1100,w1100\na,1,2\n", "each once")]
    [InlineData("id,w1100,w1104,w1102\na,1,2,3\n", "in rising or in falling order")]
    [InlineData("id,a,A,w1100,w1102\na,1,2,3,4\n", "each heading once")]
    [InlineData("id,w1100,w1102\n", "a heading alone")]
    [InlineData("", "the file is empty")]
    public void Tables_ThatCannotBe_SayWhere(string text, string says) => Assert.Contains(says, string.Join("\n", SpectraTable.Read(text).Faults), StringComparison.Ordinal);
}
