namespace Evengrist.Plant.Gs1.Checks;

/// <summary>Coupons of North America, fields one after another, each with its length before it. Rules: GS1's reference tests for these two.</summary>
internal static class Coupon
{
    private const string Lengths1To5 = "12345", Requirements = "012349";

    public static string? ExpectedCode(string part, int year)
    {
        var read = new CouponReader(part);
        read.Prefix("0123456", "company prefix");
        read.Skip(6, "offer code");
        read.Measured(Lengths1To5, 0, "save value");
        Purchase(read, "first");
        if (read.Option('1'))
        {
            read.OneOf("0123", "rule for further purchases");
            Purchase(read, "second");
            read.Prefix("01234569", "company prefix of the second purchase");
        }

        if (read.Option('2'))
        {
            Purchase(read, "third");
            read.Prefix("01234569", "company prefix of the third purchase");
        }

        Dates(read, year);
        if (read.Option('5'))
        {
            read.Measured("0123456789", 6, "serial");
        }

        if (read.Option('6'))
        {
            read.Prefix("1234567", "retailer");
        }

        if (read.Option('9'))
        {
            read.OneOf("01256", "save value code");
            read.OneOf("012", "item the value is for");
            read.Skip(1, "store coupon flag");
            read.OneOf("01", "flag against multiplying");
        }

        return read.End();
    }

    public static string? ExpectedOffer(string part)
    {
        var read = new CouponReader(part);
        read.OneOf("01", "format");
        read.Measured("0123456", 6, "funder");
        read.Skip(6, "offer code");
        read.Measured("0123456789", 6, "serial");
        return read.End();
    }

    private static void Purchase(CouponReader read, string which)
    {
        read.Measured(Lengths1To5, 0, $"{which} purchase requirement");
        read.OneOf(Requirements, $"{which} purchase requirement code");
        read.Skip(3, $"{which} purchase family");
    }

    private static void Dates(CouponReader read, int year)
    {
        var until = read.Option('3') ? read.Date(year, "last day") : "";
        var from = read.Option('4') ? read.Date(year, "first day") : "";
        if (until.Length > 0 && string.CompareOrdinal(from, until) > 0)
        {
            read.Fail("a last day not before the first");
        }
    }
}
