using Evengrist.Plant.Spectra;

namespace Evengrist.Edge.Tests.Plant.Spectra;

/// <summary>JCAMP-DX text. The forms of one row of numbers are those of McDonald and Wilks, Applied Spectroscopy 42 (1988) 151: the plain one read in an excerpt, the squeezed ones from memory and by the standard's table of pseudo-digits.</summary>
public sealed class JcampTests
{
    [Theory]
    [InlineData("1 2 3 3 2 1 0 -1 -2 -3")]
    [InlineData("+1+2+3+3+2+1+0-1-2-3")]
    [InlineData("ABCCBA@abc")]
    [InlineData("AJJ%jjjjjj")]
    [InlineData("AJJ%jX")]
    [InlineData("A J J % j X")]
    [InlineData("1 2 C T B 1 @ a b -3")]
    [InlineData("1.0E+00 2 3 3 2 1 0 -1 -2 -3")]
    public void Ordinates_InEveryForm_AreTheSameRow(string written) =>
        Assert.Equal([1, 2, 3, 3, 2, 1, 0, -1, -2, -3], One(Block($"0 {written}", 10)).Rows[0].Values);

    // Several digits: pseudo-digits hold the first alone.
    [Fact]
    public void Ordinates_OfSeveralDigits_KeepThem()
    {
        Assert.Equal([1234, -567, -567, -567, -512, -457], One(Block("0A234e67UN5S5", 6).Replace("N5S5", "N5T", StringComparison.Ordinal)).Rows[0].Values);
        Assert.Equal([100, 112, 124, 124], One(Block("0A00J2T%", 4)).Rows[0].Values);
    }

    // After differences the last value stands again at the head of the next line, at its own abscissa.
    [Fact]
    public void Lines_OfDifferences_RepeatTheLastValueAsACheck()
    {
        Assert.Equal([1, 2, 3, 4, 5, 6], One(Block("0AJJ\n2CJJJ", 6)).Rows[0].Values);
        Assert.Contains("line 9, column 2 (XYDATA): read \"4\"; expected the last value of the line above again, 3", Faults(Block("0AJJ\n2DJJJ", 6)), StringComparison.Ordinal);
        Assert.Contains("The line begins at 4, and 2 comes next", Faults(Block("0AJJ\n4CJJJ", 6)), StringComparison.Ordinal);
    }

    [Fact]
    public void Factors_AndUnits_AreApplied()
    {
        var table = One("""
            ##TITLE= wheat 7 $$ a comment
            ##JCAMP-DX= 4.24
            ##DATA TYPE= NEAR INFRARED SPECTRUM
            ##XUNITS= MICROMETERS
            ##YUNITS= REFLECTANCE
            ##FIRSTX= 1.1
            ##LASTX= 1.104
            ##X FACTOR= 0.001
            ##YFACTOR= 0.01
            ##NPOINTS= 3
            ##FIRSTY= 0.5
            ##$PROTEIN= 11.84
            ##XYDATA= (X++(Y..Y))
            1100 50 10 1
            ##END=
            """);
        Assert.Equal(("nm", "wheat 7", "11.84"), (table.Axis.Unit, table.Rows[0].Id, table.Rows[0].Columns["Protein"].Text));
        Assert.Equal([1100, 1102, 1104], table.Axis.Positions);
        Assert.Equal([Math.Log10(2), 1, 2], table.Rows[0].Values.Select(v => Math.Round(v, 12)).Select(v => v == Math.Round(Math.Log10(2), 12) ? Math.Log10(2) : v));
    }

    [Fact]
    public void Blocks_InALinkOrOneAfterAnother_AreSpectraOfOneAxis()
    {
        var two = Block("0 1 2 3", 3) + "\n" + Block("0 3 2 1", 3, "second");
        Assert.Equal(["row", "second"], One(two).Rows.Select(r => r.Id));
        Assert.Equal(["row", "second"], One($"##TITLE= all\n##DATATYPE= LINK\n##BLOCKS= 2\n{two}\n##END=").Rows.Select(r => r.Id));
        Assert.Contains("The spectrum of second is not on the axis of the first: there are 2 channels, not 3", Faults(Block("0 1 2 3", 3) + "\n" + Block("0 3 2", 2, "second")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0 1 2 3", 4, "##NPOINTS= 4 and the table has 3 points")]
    [InlineData("0 1 ? 3", 3, "the point is marked as missing")]
    [InlineData("0 1 & 3", 3, "line 8, column 5 (XYDATA)")]
    [InlineData("0 T 3", 2, "how often the value before goes on")]
    [InlineData("0 1 s99999999", 2, "up to 5000 points")]
    [InlineData("0J", 2, "a value before the first difference")]
    [InlineData("A 2 3", 2, "the abscissa of the line first")]
    public void Tables_ThatCannotBe_SayWhere(string table, int points, string says) => Assert.Contains(says, Faults(Block(table, points)), StringComparison.Ordinal);

    [Theory]
    [InlineData("##XYDATA= (X++(Y..Y))", "##XYPOINTS= (XY..XY)", "Tables in the form")]
    [InlineData("(X++(Y..Y))", "(XY..XY)", "Tables in the form")]
    [InlineData("##FIRSTX= 0", "##FIRSTX= zero", "##FIRSTX= belongs to every table")]
    [InlineData("##FIRSTX= 0\n", "", "##FIRSTX= belongs to every table")]
    [InlineData("##LASTX= 2", "##LASTX= 2\n##LASTX= 3", "##LASTX= stands twice")]
    [InlineData("##NPOINTS= 3", "##NPOINTS= 3\n##FIRSTY= 7", "##FIRSTY= 7 and the table begins with 1")]
    [InlineData("##NPOINTS= 3", "##NPOINTS= 3\n##YUNITS= REFLECTANCE", "has no logarithm")]
    [InlineData("##TITLE= row\n", "", "A block begins with ##TITLE=")]
    public void Labels_ThatCannotBe_SayWhere(string from, string to, string says) => Assert.Contains(says, Faults(Block("0 1 2 0", 3).Replace(from, to, StringComparison.Ordinal)), StringComparison.Ordinal);

    private static string Block(string table, int points, string title = "row") =>
        $"##TITLE= {title}\n##DATATYPE= INFRARED SPECTRUM\n##XUNITS= NANOMETERS\n##FIRSTX= 0\n##LASTX= {points - 1}\n##NPOINTS= {points}\n##XYDATA= (X++(Y..Y))\n{table}\n##END=";

    private static SpectraTable One(string text)
    {
        var read = SpectraTable.Read(text);
        Assert.Empty(read.Faults);
        return read.Value;
    }

    private static string Faults(string text) => string.Join("\n", SpectraTable.Read(text).Faults);
}
