using System.Text;
using Evengrist.Plant.Cases;
using NodaTime;

namespace Evengrist.Edge.Tests.Plant;

public sealed class OrderTableTests
{
    private static Evengrist.Plant.Parsed<OrderTable> Read(string text)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return OrderTable.Read(stream, DateTimeZone.Utc, Instant.FromUtc(2026, 1, 14, 12, 0));
    }

    [Fact]
    public void Read_Example_IsTwoOrders() => Assert.Equal([("SO-6001", 960m, 1), ("SO-6002", 24000m, 2)], Read(OrderColumns.Example).Value.Rows.Select(r => (r.Order.Number, r.Order.Quantity, r.Order.Priority)));

    [Theory]
    [InlineData("a;C1;WB-25;-4;packs;2026-01-16 06:00;1", 4, "quantity")]
    [InlineData("a;C1;WB-25;x;packs;2026-01-16 06:00;1", 4, "quantity")]
    [InlineData("a;C1;WB-25;4;tons;2026-01-16 06:00;1", 5, "unit")]
    [InlineData("a;C1;WB-25;4;packs;soon;1", 6, "due")]
    [InlineData("a;C1;WB-25;4;packs;2026-01-16 06:00;12", 7, "priority")]
    [InlineData("a;C1;;4;packs;2026-01-16 06:00;1", 3, "product")]
    public void Read_WrongCell_IsNamedWithLineAndColumn(string row, int column, string heading)
    {
        var fault = Assert.Single(Read($"number;customer;product;quantity;unit;due;priority\nok;C1;WB-25;4;packs;2026-01-16 06:00;1\n{row}\n").Faults);
        Assert.Equal((3, column, heading), (fault.Line, fault.Column, fault.Name));
    }
}
