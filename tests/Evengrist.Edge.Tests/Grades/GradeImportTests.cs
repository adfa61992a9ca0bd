using Evengrist.Edge.Tests.Plant;
using Evengrist.Ledger;
using Evengrist.Plant.Imports;
using Evengrist.Quantities;

namespace Evengrist.Edge.Tests.Grades;

/// <summary>Grade factors by file, under the headings of docs/import.md.</summary>
public sealed class GradeImportTests
{
    [Fact]
    public void Read_GradeFactorsCountsAndToxins_AreReadings()
    {
        const string Text = "on;at [UTC];method;damaged [%];insect-damaged [/100 g];smut balls [/250 g];live weevils [/sample];ergot [%];zearalenone [µg/kg 12mb]\nT1;2025-07-09 14:00;picked by hand;1.25;31;5.5;0;0.02;40\n";
        var readings = SmallMill.Read(Text, ImportKind.Readings).Value.Drafts.OfType<Measure>().Select(m => (m.What, m.Value, m.Unit, m.Basis)).ToArray();
        Assert.Equal(
            [
                (Property.Damaged, 1.25m, "%", default), (Property.InsectDamagedKernels, 31m, "/100 g", default), (Property.SmutBalls, 5.5m, "/250 g", default), (Property.LiveWeevils, 0m, "/sample", default),
                (Property.Ergot, 0.02m, "%", default), (Property.Zearalenone, 40m, "µg/kg", Basis.At12),
            ],
            readings);
    }

    [Theory]
    [InlineData("insect-damaged [/kg]", "31", "the heading insect-damaged [/100 g]")]
    [InlineData("glass [/kg]", "0.5", "is a count")]
    [InlineData("heat-damaged [%]", "101", "lies from 0 to 100 %")]
    public void Read_WrongUnitOrValue_IsAFaultAtItsCell(string heading, string value, string says)
    {
        var fault = Assert.Single(SmallMill.Read($"on;at [UTC];method;{heading}\nT1;2025-07-09 14:00;picked by hand;{value}\n", ImportKind.Readings).Faults);
        Assert.Equal(4, fault.Column);
        Assert.Contains(says, fault.Expected, StringComparison.Ordinal);
    }
}
