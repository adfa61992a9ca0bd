using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Evengrist.Demo;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Tests.Demo;

/// <summary>The demonstration year, generated once and taken into a book, for all tests of this folder.</summary>
public sealed class DemonstrationYear
{
    public DemonstrationYear()
    {
        (var batches, Truth) = DemonstrationMill.WithTruth();
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var batch in batches)
        {
            Add(hash, batch);
            Batches++;
            Drafts += batch.Drafts.Count;
            Book.Append(Book.ToFacts(batch.Drafts, batch.By, batch.Source, batch.Recorded));
        }

        Hash = Convert.ToHexString(hash.GetHashAndReset());
    }

    public static Instant PlanMorning { get; } = MillCalendar.At(MillCalendar.PlanDay, 6);

    public Book Book { get; } = new();

    public Truth Truth { get; }

    public int Batches { get; }

    public int Drafts { get; }

    public string Hash { get; }

    /// <summary>Digest of everything recorded with a seed, as text.</summary>
    public static string HashOf(IEnumerable<DemoBatch> batches)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var batch in batches)
        {
            Add(hash, batch);
        }

        return Convert.ToHexString(hash.GetHashAndReset());
    }

    public double StockOn15September(string bin) => (double)Book.StockOf(Book.Named(bin).Id, PlanMorning).Tonnes;

    /// <summary>What a source has given up to a moment, t.</summary>
    public double Given(Place source, Instant? until = null) =>
        -(double)(until is { } at ? Book.StockOf(source.Id, at) : Book.StockOf(source.Id)).Tonnes;

    /// <summary>Movements that count between two kinds of place.</summary>
    public IEnumerable<Movement> Between(PlaceKind from, PlaceKind to) =>
        Book.Movements.Where((m, i) => Book.Counts(i) && Book[m.From].Kind == from && Book[m.To].Kind == to);

    private static void Add(IncrementalHash hash, DemoBatch batch)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{batch.By}|{batch.Source}|{batch.Recorded.ToMicros()}\n");
        foreach (var draft in batch.Drafts)
        {
            text.Append(CultureInfo.InvariantCulture, $"{draft.Key}|{draft.Corrects?.Value}|{draft.Note}|");
            _ = draft switch
            {
                Move m => text.Append(CultureInfo.InvariantCulture, $"{m.From}>{m.To} {m.Mass.Grams} {m.At.ToMicros()} {m.Until?.ToMicros()}"),
                Measure r => text.Append(CultureInfo.InvariantCulture, $"{r.On} {r.At.ToMicros()} {r.What} {r.Value} {r.Unit} {r.Basis} {r.Method} {r.Instrument} {r.StandardUncertainty}"),
                OpenPlace p => text.Append(CultureInfo.InvariantCulture, $"{p.Code} {p.Kind} {p.Name} {p.Material} {p.Of} {p.Capacity?.Grams} {p.CoreShare} {p.Stirred.Grams}"),
                Connect c => text.Append(CultureInfo.InvariantCulture, $"{c.From}>{c.To}"),
                Happen h => text.Append(CultureInfo.InvariantCulture, $"{h.On} {h.At.ToMicros()} {h.Kind} {h.Text}"),
                _ => throw new InvalidOperationException($"A draft of a sort unknown here: {draft}."),
            };
            text.Append('\n');
        }

        hash.AppendData(Encoding.UTF8.GetBytes(text.ToString()));
    }
}
