namespace Evengrist.Plant.Cases;

/// <summary>The columns of a checkweigher's file: one row for each package.</summary>
public static class WeighingColumns
{
    /// <summary>All of them; of gross and net one has to be there, each weight with its unit in square brackets: g, kg or lb.</summary>
    public static IReadOnlyList<FileColumn> All { get; } =
    [
        new("moment", "", true, "day and time by the mill's clock, as 2026-01-14 10:55:07.120, or with its offset"),
        new("line", "", true, "code of the packing line, as in the ledger"),
        new("product", "", true, "code of the product, as on the page of products"),
        new("gross", "g, kg or lb", false, "gross weight, as gross [g]; this or net"),
        new("net", "g, kg or lb", false, "net weight, by the tare the checkweigher takes off"),
        new("tare", "g, kg or lb", false, "what the checkweigher takes off for the empty package; that of the product where left out"),
        new("rejected", "", false, "yes or 1 where the line threw the package out; no, 0 or nothing else"),
    ];

    /// <summary>What a file looks like.</summary>
    public const string Example =
        """
        moment;line;product;gross [g];tare [g];rejected
        2026-01-14 10:55:07.1;L1;WB-25;25224.5;180;
        2026-01-14 10:55:14.3;L1;WB-25;25198.0;180;
        2026-01-14 10:55:21.8;L1;WB-25;24611.5;180;yes
        """;
}
