using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using NodaTime;

namespace Evengrist.Milling.Clock;

/// <summary>The way of the wheat of a mill unit from the bin gates to the packer, as the ledger has it at a change.</summary>
/// <param name="Unit">The mill unit.</param>
/// <param name="Bin">Its temper bin, with what lay there at the change.</param>
/// <param name="Running">Hours of running since the change.</param>
/// <param name="TemperTonnes">What lay in the temper bin at the change, t.</param>
/// <param name="Stages">Gate to temper bin, temper bin, rolls.</param>
public sealed record WayOfUnit(Place Unit, Place Bin, RunningTime Running, double TemperTonnes, IReadOnlyList<ClockStage> Stages)
{
    /// <summary>The way, or why it cannot be told.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="section">The section of the unit.</param>
    /// <param name="changed">When the gates were changed.</param>
    /// <param name="now">The moment looked at.</param>
    /// <param name="times">What the ledger does not have.</param>
    public static (WayOfUnit? Way, string Why) Of(Book book, MillSection section, Instant changed, Instant now, WayTimes times)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(times);
        Place[] bins = [.. section.Places.Select(p => book[p]).Where(p => p.Kind == PlaceKind.TemperBin)];
        if (bins.Length != 1 || section.Units.Count != 1)
        {
            return (null, $"The way of {section.Name} has {bins.Length} temper bins and {section.Units.Count} units: the clock follows one temper bin to one unit.");
        }

        var bin = bins[0];
        if (RunningTime.Of(book, bin.Id, changed, now) is not { } running)
        {
            return (null, $"Nothing left {bin.Code} in the day before this moment: while the mill stands, nothing arrives. Look at a moment at which it runs.");
        }

        var (stock, perHour) = ((double)book.StockOf(bin.Id, changed).Grams, running.GramsPerHour);
        var stirred = Math.Clamp(bin.Stirred.Grams, 0, Math.Max(0, stock));
        return (new WayOfUnit(book[section.Units[0].Id], bin, running, stock / 1e6,
        [
            new ClockStage($"into {bin.Code}", times.GateMinutes / 60, 0) { DelayUncertainty = times.GateMinutes / 60 * times.TypedShare },
            new ClockStage($"first break of {section.Units[0].Code}", Math.Max(0, stock - stirred) / perHour, stirred / perHour)
            {
                DelayUncertainty = stock / perHour * times.StockShare, StirredUncertainty = stirred / perHour * times.StirredShare,
            },
            new ClockStage("flour spout", times.RollsMinutes / 60, times.RollsStirredMinutes / 60)
            {
                DelayUncertainty = times.RollsMinutes / 60 * times.TypedShare, StirredUncertainty = times.RollsStirredMinutes / 60 * times.TypedShare,
            },
        ]), "");
    }

    /// <summary>The last stage, a flour bin up to the packer: its stock at a moment over what runs into it.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="flour">The flour bin.</param>
    /// <param name="at">The moment.</param>
    /// <param name="isStirred">Whether it is taken as stirred; first in first out otherwise.</param>
    /// <param name="times">What the ledger does not have.</param>
    /// <returns>Null where nothing ran into it within the day before, or nothing lies there.</returns>
    public static ClockStage? Packer(Book book, Place flour, Instant at, bool isStirred, WayTimes times)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(flour);
        ArgumentNullException.ThrowIfNull(times);
        var day = at - Duration.FromDays(1);
        // Hours of running: what ran in, over the hours in which any did.
        Movement[] into = [.. book.MovementsOf(flour.Id).Select(i => book.Movements[i]).Where(m => m.To == flour.Id && m.IsFlow && m.At < at && m.Until > day && book[m.From].Kind == PlaceKind.MillUnit)];
        var hours = into.Select(m => (m.At, m.Until)).Distinct().Sum(m => (Instant.Min(m.Until, at) - Instant.Max(m.At, day)).TotalHours);
        var (stock, tonnes) = ((double)book.StockOf(flour.Id, at).Tonnes, into.Sum(m => m.TonnesWithin(day, at)));
        if (tonnes <= 0 || hours <= 0 || stock <= 0)
        {
            return null;
        }

        var wait = stock / (tonnes / hours);
        return isStirred
            ? new ClockStage($"packer, {flour.Code} stirred", 0, wait) { StirredUncertainty = wait * times.PackingShare }
            : new ClockStage($"packer, {flour.Code} first in first out", wait, 0) { DelayUncertainty = wait * times.PackingShare };
    }
}
