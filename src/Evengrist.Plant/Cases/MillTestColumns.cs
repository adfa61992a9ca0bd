namespace Evengrist.Plant.Cases;

/// <summary>The columns of a file of mill tests: one row for each figure. What is said of a test as a whole stands in its first row.</summary>
public static class MillTestColumns
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FileColumn> All { get; } =
    [
        new("taken", "", true, "day and time by the mill's clock, as 2025-09-22 09:00; empty for the test of the row above"),
        new("by", "", true, "who took it"),
        new("flow", "t/h", true, "wheat to first break, as it flows"),
        new("moisture", "%", true, "of the wheat at first break, wet basis"),
        new("wheat ash", "%", true, "of the whole wheat, on the basis"),
        new("wheat protein", "%", true, "of the whole wheat, on the basis"),
        new("kind", "", true, "what the row gives: release, sieve, stream, gap, air or cloth"),
        new("at", "", true, "code of the passage or the stream on the flow sheet"),
        new("value", "", true, "release, what falls through the sieve, or yield of the stream: %; gap or cloth then: µm; air: m/s"),
        new("basis", "", false, "moisture basis of every ash and protein: dry, 14mb or another; 14mb where left out"),
        new("hardness", "", false, "single-kernel index; 65 where left out"),
        new("falling number", "s", false, "of the wheat; 350 where left out"),
        new("sheet", "", false, "version of the flow sheet in force; the newest where left out"),
        new("opening", "µm", false, "of the test sieve; for a cloth, what the flow sheet says"),
        new("ash", "%", false, "of the stream, on the basis"),
        new("protein", "%", false, "of the stream, on the basis"),
        new("remark", "", false, "what else has to be known of the test"),
    ];

    /// <summary>What a file looks like.</summary>
    public const string Example =
        """
        taken;by;flow [t/h];moisture [%];wheat ash [%];wheat protein [%];kind;at;value;opening [µm];ash [%];protein [%];remark
        2025-09-22 09:00;Dr Anya Holt;17.5;16.0;1.46;12.4;release;B1;29.5;;;;first of the autumn
        ;;;;;;release;B2;44.1;;;;
        ;;;;;;sieve;B1;52.0;1000;;;
        ;;;;;;stream;1M;14.2;;0.371;11.0;
        2025-09-29 09:00;Femi Strand;17.4;16.1;1.45;12.5;gap;B1;480;;;;
        ;;;;;;release;B1;31.2;;;;
        """;
}
