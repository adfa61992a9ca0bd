namespace Evengrist.Plant.Cases;

/// <summary>The columns of a file of orders: one row for each order.</summary>
public static class OrderColumns
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FileColumn> All { get; } =
    [
        new("number", "", true, "the order's number, its own"),
        new("customer", "", false, "code of the customer in the ledger; empty for the mill's own warehouse"),
        new("product", "", true, "code of the product"),
        new("quantity", "", true, "above 0"),
        new("unit", "", false, "packs or kg; kg where left out"),
        new("due", "", true, "day and time by the mill's clock, as 2026-01-14 18:00, or with its offset"),
        new("priority", "", false, "1 to 9, 1 where left out: being late counts so many times"),
        new("taken", "", false, "when the order was taken; now where left out"),
        new("from stock", "", false, "yes where what stood packed before may serve it"),
        new("remark", "", false, "what else is agreed"),
    ];

    /// <summary>What a file looks like.</summary>
    public const string Example =
        """
        number;customer;product;quantity;unit;due;priority;remark
        SO-6001;ORLAWICK-1;WB-25;960;packs;2026-01-16 06:00;1;
        SO-6002;C6;PA-25;24000;kg;2026-01-16 18:00;2;two trucks
        """;
}
