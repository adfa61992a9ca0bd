using Evengrist.Packing.Codes;
using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Links;
using Evengrist.Plant.Gs1.Symbols;
using Evengrist.Plant.Prints.Labels;
using NodaTime;
using UglyToad.PdfPig;

namespace Evengrist.Edge.Tests.Plant.Gs1;

public sealed class SymbolTests : IDisposable
{
    private const int Year = 2026;
    private const string Bag = "010952123400201715261007310302500010WB-251007-3|211001";

    private readonly string folder = Directory.CreateTempSubdirectory("evengrist-codes-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [ScanBackFact]
    public void Symbols_EachByItself_AreReadBackByAnotherReader()
    {
        var elements = ElementString.Make([("01", "09521234002017"), ("10", "F24-0915-2"), ("15", "250315"), ("21", "1001")], Year).Value;
        var link = DigitalLinks.Write(elements).Value;
        Assert.Equal([$"QR-Code:{link}"], ScanBack.Zbar(ScanBack.Boxes(SymbolSvg.Write(Gs1Symbols.Qr(link).Value), folder)));
        var bars = ScanBack.Boxes(SymbolSvg.Write(Gs1Symbols.Bars(elements).Value), folder);
        Assert.Equal(["CODE-128:" + elements.Transmitted()], ScanBack.Zbar(bars));
        Assert.Equal("]C1" + elements.Transmitted().Replace(ElementString.Separator, '|'), ScanBack.Zxing(bars, "Code128"));
        var matrix = ScanBack.Boxes(SymbolSvg.Write(Gs1Symbols.DataMatrix(elements).Value), folder);
        Assert.Equal("|" + elements.Transmitted().Replace(ElementString.Separator, '|'), ScanBack.Dmtx(matrix));
        Assert.Equal("]d2" + elements.Transmitted().Replace(ElementString.Separator, '|'), ScanBack.Zxing(matrix, "DataMatrix"));
    }

    [ScanBackFact]
    public void BagLabel_PrintedAsPdf_IsReadBackWhole()
    {
        var label = BagLabel.Draw(Case(), "1001", LabelSize.A6, Year).Value;
        var page = ScanBack.Page(label.Pdf(), folder);
        var read = ScanBack.Zbar(page);
        Assert.Contains("QR-Code:https://id.gs1.org/01/09521234002017/10/WB-251007-3/21/1001?15=261007&3103=025000", read);
        Assert.Contains("CODE-128:0109521234002017", read);
        Assert.Equal("]d2" + Bag, ScanBack.Zxing(page, "DataMatrix"));
        Assert.Equal(label.Elements!.ToString(), ElementStrings.Read("]d2" + Bag.Replace('|', ElementString.Separator), Year).Value.ToString());
    }

    [ScanBackFact]
    public void PalletLabel_OnBothSheets_IsReadBackWhole()
    {
        const string All = "000952123400000004260209521234002017152610073740|10WB-251007-3";
        foreach (var size in new[] { LabelSize.A6, LabelSize.FourBySix })
        {
            var label = PalletLabel.Draw(Case(), Pallet(), 40, size, Year).Value;
            var page = ScanBack.Page(label.Pdf(), folder);
            Assert.Empty(label.Remarks); // every bar gets 0.495 mm: date and lot stand apart
            Assert.Equal(["CODE-128:00095212340000000426", "CODE-128:02095212340020173740", "CODE-128:10WB-251007-3", "CODE-128:15261007"], ScanBack.Zbar(page).Order(StringComparer.Ordinal));
            var matrix = ScanBack.Page(label.Pdf(), folder, corner: 360, width: (int)(size.Width / 25.4 * 300));
            Assert.Equal("|" + All, ScanBack.Dmtx(matrix));
            Assert.Equal("]d2" + All, ScanBack.Zxing(matrix, "DataMatrix"));
            Assert.Equal(ScanBack.Zbar(page).Order(StringComparer.Ordinal), ScanBack.Zbar(ScanBack.Boxes(label.Svg(), folder)).Order(StringComparer.Ordinal));
        }
    }

    [ScanBackFact]
    public void PalletLabel_OnHoldOrWithoutANumber_SaysSoAndIsReadBack()
    {
        var facts = new PalletFacts("Sennorby Mill", "P-WB-251007-0003", "White bread flour", Case().Item, 40, 25, Case().Lot, new LocalDate(2025, 10, 7), new LocalDate(2026, 10, 7), []) { Number = Pallet() };
        var held = PalletLabel.Draw(facts with { Hold = "falling number 180 s, laboratory" }, LabelSize.A6, Year).Value;
        Assert.Contains("HOLD", Words(held), StringComparison.Ordinal);
        Assert.Contains("CODE-128:00095212340000000426", ScanBack.Zbar(ScanBack.Page(held.Pdf(), folder)));
        var plain = PalletLabel.Draw(facts with { Number = null }, LabelSize.A6, Year).Value;
        Assert.Null(plain.Elements);
        Assert.Contains("no number (SSCC)", plain.Remarks[^1], StringComparison.Ordinal);
        Assert.Equal(["CODE-128:P-WB-251007-0003"], ScanBack.Zbar(ScanBack.Page(plain.Pdf(), folder)));
        using var both = PdfDocument.Open(Label.Pdf([held, plain]));
        Assert.Equal(2, both.NumberOfPages);
    }

    [Fact]
    public void Labels_Words_StandOnThePrint()
    {
        var bag = Words(BagLabel.Draw(Case(), null, LabelSize.A6, Year).Value);
        Assert.All(new[] { "White bread flour", "Net weight 25 kg (55.1 lb)", "Lot WB-251007-3", "Best before 7 Oct 2026", "CONTAINS WHEAT, SOY.", "Raw flour: not ready to eat. Cook or bake before eating.", "(10)WB-251007-3" },
            w => Assert.Contains(w, bag, StringComparison.Ordinal));
        var pallet = Words(PalletLabel.Draw(Case(), Pallet(), 40, LabelSize.A6, Year).Value);
        Assert.All(new[] { "40 × 25 kg = 1,000 kg net", "PALLET (SSCC) 095212340000000426", "CONTENT 09521234002017", "COUNT 40", "CONTAINS WHEAT, SOY.", "Raw flour: not ready to eat." },
            w => Assert.Contains(w, pallet, StringComparison.Ordinal));
    }

    [Fact]
    public void Labels_WhatCannotBePrinted_IsRefusedInWords()
    {
        Assert.Contains("scanning from a fork truck", string.Concat(PalletLabel.Draw(Case(lot: "WHITEBREAD-251007-3"), Pallet(), 40, LabelSize.A6, Year).Value.Remarks), StringComparison.Ordinal);
        Assert.Contains(PalletLabel.Draw(Case(lot: "a1b2c3d4e5f6g7h8i9j0"), Pallet(), 40, new LabelSize("small", 60, 148), Year).Faults, f => f.Expected.Contains("a shorter value", StringComparison.Ordinal));
        Assert.Contains(BagLabel.Draw(Case(kilograms: 0), null, LabelSize.A6, Year).Faults, f => f.Name == "$.netKilograms");
        Assert.Contains(BagLabel.Draw(Case(flour: "\u0001"), null, LabelSize.A6, Year).Faults, f => f.Name == "$.flour");
        Assert.Contains(BagLabel.Draw(Case(), "a b", LabelSize.A6, Year).Faults, f => f.Name == "(21)");
        Assert.Contains(BagLabel.Draw(Case(year: 2080), null, LabelSize.A6, Year).Faults, f => f.Name == "$.bestBefore");
        Assert.Contains(PalletLabel.Draw(Case(), Pallet(), 0, LabelSize.A6, Year).Faults, f => f.Name == "$.bags");
        Assert.Contains("at most 48", Gs1Symbols.Bars(ElementString.Make([("00", "095212340000000426"), ("02", "09521234002017"), ("15", "250315"), ("37", "40"), ("10", "F24-0915-2")], Year).Value).Faults[0].Expected, StringComparison.Ordinal);
    }

    private static LabelCase Case(string flour = "White bread flour", decimal kilograms = 25, string lot = "WB-251007-3", int year = 2026)
    {
        Assert.True(Gtin.TryParse("09521234002017", out var item, out _));
        Assert.True(LotCode.TryParse(lot, out var code, out _));
        return new LabelCase("Sennorby Mill (an invented mill)", flour, item, kilograms, code, new LocalDate(year, 10, 7), ["soy"]);
    }

    private static Sscc Pallet() => Sscc.TryParse("095212340000000426", out var pallet, out _) ? pallet : throw new InvalidOperationException();

    private static string Words(Label label)
    {
        using var pdf = PdfDocument.Open(label.Pdf());
        return string.Join(' ', pdf.GetPage(1).GetWords().Select(w => w.Text));
    }
}
