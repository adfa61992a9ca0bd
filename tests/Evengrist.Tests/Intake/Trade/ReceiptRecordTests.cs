using Evengrist.Intake.Trade;
using Evengrist.Quantities;

namespace Evengrist.Tests.Intake.Trade;

/// <summary>21 CFR 1.337(a)(1) to (6), 2015 annual edition: what a nontransporter records of food it receives.</summary>
public sealed class ReceiptRecordTests
{
    private static readonly Party Grower = new() { Code = "F02", Name = "Drumsallow", Address = "2 Hollow Road, Northledge", Phone = "555-0102", Fax = "555-0103", Email = "office@drumsallow.example" };
    private static readonly Party Haulier = new() { Code = "H1", Name = "Pell Haulage", Address = "9 Yard Lane, Ulverhan", Phone = "555-0150" };

    private static readonly ReceiptRecord Whole = Of();

    // (a)(1): name, address, telephone, and if available fax and e-mail of the nontransporter immediate previous source.
    [Fact]
    public void A1_Source_NameAddressTelephoneAndFaxAndEmailIfAvailable()
    {
        Assert.Equal(["Drumsallow", "2 Hollow Road, Northledge", "555-0102", "555-0103", "office@drumsallow.example"], Texts(Whole, "21 CFR 1.337(a)(1)"));
        Assert.True(OfSource(Grower with { Fax = null, Email = null }).IsComplete);
        Assert.Equal(["telephone of the source (1.337(a)(1))"], OfSource(Grower with { Phone = "" }).Missing);
        Assert.Equal(["name of the source (1.337(a)(1))", "address of the source (1.337(a)(1))", "telephone of the source (1.337(a)(1))"], OfSource(null).Missing);
    }

    // (a)(2): type of food, to include brand name and specific variety.
    [Fact]
    public void A2_Food_TypeBrandAndVariety()
    {
        Assert.Equal(["wheat, HW, no brand", "Larkspur"], Texts(Whole, "21 CFR 1.337(a)(2)"));
        Assert.Equal(["variety (1.337(a)(2))"], Of(variety: "").Missing);
        Assert.Equal(["type of food (1.337(a)(2))"], Of(wheat: "").Missing);
    }

    [Fact]
    public void A2_WheatOfAMerchant_HasNoVarietyToBeMissed()
    {
        var record = Of(variety: "", knowable: false);
        Assert.True(record.IsComplete);
        Assert.Contains("mixed, from a merchant", Texts(record, "21 CFR 1.337(a)(2)"));
    }

    // (a)(3): the date received.
    [Fact]
    public void A3_Date_Received() => Assert.Equal(["2025-07-09"], Texts(Whole, "21 CFR 1.337(a)(3)"));

    // (a)(4): lot or code number or other identifier.
    [Fact]
    public void A4_Lot_IsTheTicket() => Assert.Equal(["25-0709-061"], Texts(Whole, "21 CFR 1.337(a)(4)"));

    // (a)(5): quantity and how it is packaged.
    [Fact]
    public void A5_Quantity_AndHowPacked()
    {
        Assert.Equal(["26,340 kg", "in bulk, trailer 23"], Texts(Whole, "21 CFR 1.337(a)(5)"));
        Assert.Equal(["quantity (1.337(a)(5))"], Of(net: 0m).Missing);
    }

    // (a)(6): the same contact items of the transporter.
    [Fact]
    public void A6_Transporter_NameAddressTelephoneAndFaxAndEmailIfAvailable()
    {
        Assert.Equal(["Pell Haulage", "9 Yard Lane, Ulverhan", "555-0150", "", ""], Texts(Whole, "21 CFR 1.337(a)(6)"));
        Assert.Equal(["address of the transporter (1.337(a)(6))"], OfCarrier(Haulier with { Address = "" }).Missing);
    }

    [Fact]
    public void Record_Whole_IsComplete() => Assert.True(Whole.IsComplete && Whole.Missing.Count == 0);

    private static ReceiptRecord Of(Party? source, Party? carrier, string variety, bool knowable, string wheat, decimal net) =>
        ReceiptRecord.Of("25-0709-061", source, wheat, variety, knowable, new(2025, 7, 9), Mass.FromKilograms(net), "trailer 23", carrier);

    private static ReceiptRecord Of(string variety = "Larkspur", bool knowable = true, string wheat = "HW", decimal net = 26_340m) => Of(Grower, Haulier, variety, knowable, wheat, net);

    private static ReceiptRecord OfSource(Party? source) => Of(source, Haulier, "Larkspur", true, "HW", 26_340m);

    private static ReceiptRecord OfCarrier(Party? carrier) => Of(Grower, carrier, "Larkspur", true, "HW", 26_340m);

    private static IEnumerable<string> Texts(ReceiptRecord record, string rule) => record.Items.Where(i => i.Rule == rule).Select(i => i.Text);
}
