using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Ledger;

/// <summary>A mill posed for a test: drafts in, a book and its reckonings out.</summary>
internal sealed class PosedMill
{
    public static readonly Instant Start = Instant.FromUtc(2025, 9, 15, 12, 0);
    private int key;

    public Book Book { get; } = new();

    public static Instant Hour(double hours) => Start + Duration.FromHours(hours);

    public PosedMill Open(PlaceKind kind, params string[] codes)
    {
        Record(codes.Select(c => (Draft)new OpenPlace(Key(), c, kind)).ToArray());
        return this;
    }

    public PosedMill Open(OpenPlace place)
    {
        Record(place);
        return this;
    }

    public PosedMill Connect(string from, string to)
    {
        Record(new Connect(Key(), from, to));
        return this;
    }

    public PosedMill Move(string from, string to, decimal tonnes, double hour, double? until = null)
    {
        Record(new Move(Key(), from, to, Mass.FromTonnes(tonnes), Hour(hour), until is { } end ? Hour(end) : null));
        return this;
    }

    public IReadOnlyList<Fact> Record(params Draft[] drafts)
    {
        var facts = Book.ToFacts(drafts, "Tester", "test", Instant.FromUtc(2026, 6, 30, 0, 0));
        Book.Append(facts);
        return facts;
    }

    public string Key() => $"k{++key}";

    public PlaceId Id(string code) => Book.Named(code).Id;

    public Reckoning Reckon(Outflow outflow, Mark? mark = null)
    {
        var reckoning = new Reckoning(Book, outflow, mark);
        reckoning.CatchUp();
        return reckoning;
    }

    /// <summary>Shares of the origins in a parcel, by code of the place they came from; walks every path, for small graphs.</summary>
    public Dictionary<string, double> OriginsOf(Reckoning reckoning, int parcel)
    {
        var found = new Dictionary<string, double>();
        Walk(parcel, 1);
        return found;

        void Walk(int at, double share)
        {
            var parents = reckoning.Parcels.Rows.ParentsOf(at);
            if (parents.IsEmpty)
            {
                var code = Book[reckoning.Parcels.PlaceOf(at)].Code;
                found[code] = found.GetValueOrDefault(code) + share;
            }

            for (var i = 0; i < parents.Length; i++)
            {
                Walk(parents[i], share * reckoning.Parcels.Rows.SharesOf(at)[i]);
            }
        }
    }
}
