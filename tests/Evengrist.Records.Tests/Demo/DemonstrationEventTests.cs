using Evengrist.Demo;
using Evengrist.Intake;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Tests.Demo;

/// <summary>The dated events of the year (docs/demonstration.md), found again in the facts.</summary>
[Collection(DemonstrationYearCollection.Name)]
public sealed class DemonstrationEventTests(DemonstrationYear year)
{
    [Fact]
    public void NirIncident_ReadingsAgainstTruth_ShiftByPointTwoEight()
    {
        var from = MillCalendar.At(new LocalDate(2025, 10, 7), 10, 20);
        var until = MillCalendar.At(new LocalDate(2025, 10, 8), 13);
        var unit = year.Book.Named("UA");
        var errors = year.Book.ReadingsOn(unit.Id).Where(r => r is { What: Property.Protein, Method: "NIR" })
            .Select(r => (r.At, Error: (double)r.Value - year.Truth.Flours.Last(f => f.Unit == 'A' && f.At <= r.At).Protein)).Where(e => e.At > from - Duration.FromDays(20) && e.At < until).ToArray();
        Assert.InRange(errors.Where(e => e.At < from).Average(e => e.Error), -0.03, 0.03);
        Assert.InRange(errors.Where(e => e.At >= from).Average(e => e.Error), 0.20, 0.36);
    }

    [Fact]
    public void NirIncident_CheckPairs_AreThoseOfTheWatch()
    {
        // Worked by hand from the pairs: pairs 1-4 mean difference +0.008, pairs 5-12 +0.279.
        var readings = year.Book.ReadingsOn(year.Book.Named("UA").Id);
        var differences = readings.Where(r => r.Method == "NIR, watch").Zip(readings.Where(r => r.Method == "combustion, watch"), (n, r) => n.Value - r.Value).ToArray();
        Assert.Equal(12, differences.Length);
        Assert.Equal(0.008, (double)differences[..4].Average(), 0.0006);
        Assert.Equal(0.279, (double)differences[4..].Average(), 0.0006);
    }

    [Fact]
    public void MaltFeeder_Empty_FiveTonnesWithoutMalt()
    {
        var (from, until) = (MillCalendar.At(new LocalDate(2025, 12, 2), 14, 10), MillCalendar.At(new LocalDate(2025, 12, 2), 14, 35));
        var book = year.Book;
        var mixer = book.Named("FMA").Id;
        var flows = book.MovementsOf(mixer).Select(i => book.Movements[i]).Where(m => m.To == mixer && m.At < until && m.Until > from).ToArray();
        Assert.DoesNotContain(flows, m => book[m.From].Material == "malted barley flour");
        var patent = Assert.Single(flows, m => book[m.From].Code == "UA");
        // 25 minutes at 12.075 t/h are 5.03 t; the unit made a little less that day.
        Assert.Equal(5.03, (double)patent.Mass.Tonnes * ((until - from) / (patent.Until - patent.At)), 0.2);
    }

    [Fact]
    public void NetworkHour_Tickets_AreEnteredTheNextMorning()
    {
        var (from, until) = (MillCalendar.At(new LocalDate(2025, 7, 9), 14, 5), MillCalendar.At(new LocalDate(2025, 7, 9), 15, 10));
        var offline = DemonstrationMill.Drafts().Where(b => b.Source == "scale house, reserved numbers").ToArray();
        var batch = Assert.Single(offline);
        Assert.InRange(batch.Drafts.OfType<OpenPlace>().Count(), 7, 11);
        Assert.All(batch.Drafts.OfType<Measure>().Where(m => m.What == Property.GrossWeight), m => Assert.InRange(m.At, from, until));
        Assert.True(batch.Recorded > until + Duration.FromHours(12));
    }

    [Fact]
    public void Suspect_Reported_OnTheMorningTheDemonstrationOpens()
    {
        var note = Assert.Single(year.Book.HappeningsOn(year.Book.Named("25-0709-061").Id), h => h.Kind == HappeningKind.Note);
        Assert.Equal(MillCalendar.At(new LocalDate(2026, 1, 14), 10, 15), note.At);
        Assert.True(note.At < MillCalendar.OpeningMoment);
    }

    [Fact]
    public void Mistyped_Weights_ArePutRight()
    {
        var corrected = Enumerable.Range(0, year.Book.Movements.Count).Count(i => !year.Book.Counts(i));
        Assert.Equal(8, corrected);
        Assert.Equal(2, year.Book.Readings.Count(r => !year.Book.Counts(r)));
    }

    [Fact]
    public void Holds_OnPallets_AreAllReleasedAndNoneLeftWhileHeld()
    {
        var held = year.Book.Happenings.Where(h => h.Kind == HappeningKind.Held).ToArray();
        Assert.InRange(held.Length, 150, 700);
        Assert.Equal(held.Length, year.Book.Happenings.Count(h => h.Kind == HappeningKind.Released));
        Assert.All(held, h => Assert.True(year.Book.MovementsOf(h.On).Select(i => year.Book.Movements[i]).Where(m => m.From == h.On).All(m => year.Book.HoldOn(h.On, m.At) is null)));
    }

    [Fact]
    public void Contract_OfAGrowersTruck_SettlesIt()
    {
        var ticket = year.Book.Named("25-0709-061");
        var text = Assert.Single(year.Book.HappeningsOn(ticket.Id), h => h.Kind == HappeningKind.Contract).Text;
        Assert.Contains(HouseContracts.All, t => text == $"{t.Code} {t.Version}");
        Assert.All(HouseContracts.All, t => Assert.Empty(t.Faults()));
        Assert.All(HouseContracts.All, t => Assert.True(TermsJson.TryRead(TermsJson.Write(t), out _, out _)));
    }

    [Fact]
    public void Soundings_OfTheYear_LieWithinTheirUncertaintyNineteenTimesInTwenty()
    {
        var book = year.Book;
        var soundings = book.OfKind(PlaceKind.Bin).SelectMany(b => book.ReadingsOn(b.Id).Where(r => r.What == Property.SoundedStock).Select(r => (Bin: b, Reading: r))).ToArray();
        Assert.InRange(soundings.Length, 150, 220);
        var within = soundings.Count(s => Math.Abs(s.Reading.Value - book.StockOf(s.Bin.Id, s.Reading.At).Tonnes) <= 2 * s.Reading.StandardUncertainty);
        Assert.True(within >= 0.95 * soundings.Length, $"{within} of {soundings.Length}");
        Assert.Equal(soundings.Length, book.Readings.Count(r => r.What == Property.Ullage));
    }

    [Fact]
    public void Fumigations_OfTheYear_AreClearedByALicensedPersonAndNothingMovesMeanwhile()
    {
        var gassed = year.Book.Happenings.Where(h => h.Kind == HappeningKind.UnderGas).ToArray();
        Assert.Equal(["B15", "B16"], gassed.Select(h => year.Book[h.On].Code));
        foreach (var gas in gassed)
        {
            var cleared = year.Book.HappeningsOn(gas.On).First(h => h.At > gas.At && h.Kind == HappeningKind.GasCleared);
            Assert.Equal("FA-1187", Evengrist.Bins.States.GasClearance.Read(cleared.Particulars)!.Licence);
            Assert.DoesNotContain(year.Book.MovementsOf(gas.On).Select(i => year.Book.Movements[i]), m => m.At < cleared.At && m.Until >= gas.At);
        }
    }
}
