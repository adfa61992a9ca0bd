using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A trace as it was asked in an address: text, so that nothing typed is lost when it cannot be answered.</summary>
public sealed record TraceAsk
{
    /// <summary>Packages with less are counted, not listed, as long as nobody says otherwise; kilograms.</summary>
    public const decimal UsualThreshold = 50m;

    /// <summary>Code of a truck, field, pallet, additive lot, bin, mill unit or customer.</summary>
    public string Code { get; init; } = "";

    /// <summary>Only what left from this moment on.</summary>
    public string From { get; init; } = "";

    /// <summary>Only what left before this moment.</summary>
    public string Until { get; init; } = "";

    /// <summary><c>roots</c>, <c>reach</c>, or empty for what is usual for the kind of place.</summary>
    public string Way { get; init; } = "";

    /// <summary>Threshold, kilograms.</summary>
    public string Kilograms { get; init; } = "";

    /// <summary>Weights of the hypotheses, in the order of <see cref="OutflowWords.All"/>; empty for the usual ones.</summary>
    public IReadOnlyList<string> Weights { get; init; } = ["", "", ""];

    /// <summary>The threshold as read; the usual one where none was typed or it cannot be.</summary>
    public Mass Threshold => Mass.FromKilograms(ReadKilograms() ?? UsualThreshold);

    /// <summary>The beliefs as read; the usual ones where none were typed or they cannot be.</summary>
    public IReadOnlyList<Belief> Beliefs => ReadBeliefs() ?? Belief.Usual;

    /// <summary>Whether the beliefs are those assumed until the site has made its own tracer trial.</summary>
    public bool AreAssumed => Beliefs.SequenceEqual(Belief.Usual);

    /// <summary>The fields of an address that asks the same.</summary>
    public IEnumerable<KeyValuePair<string, string?>> Query(string? kilograms = null, int? page = null)
    {
        var fields = new List<KeyValuePair<string, string?>>
        {
            new("code", Code), new("from", From), new("until", Until), new("way", Way), new("kg", kilograms ?? Kilograms),
            new("fifo", Weights[0]), new("core", Weights[1]), new("stirred", Weights[2]), new("page", page is > 1 ? page.Value.ToString(CultureInfo.InvariantCulture) : ""),
        };
        return fields.Where(f => !string.IsNullOrEmpty(f.Value));
    }

    /// <summary>Whether what is usual for a place is to ask what it has reached, not where it came from.</summary>
    public static bool IsUsuallyForward(Place place, bool spanned)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.Kind.Role() switch
        {
            PlaceRole.Source => true,
            PlaceRole.Unit => place.Kind == PlaceKind.Truck,
            PlaceRole.Sink => false,
            _ => spanned,
        };
    }

    /// <summary>The question in the terms of tracing.</summary>
    /// <param name="book">The ledger, for the code.</param>
    /// <param name="moment">Reads a moment; null where the text is none.</param>
    /// <param name="asOf">The moment looked back from.</param>
    /// <param name="faults">What is wrong and what to do; empty where nothing is.</param>
    public TraceQuestion? Resolve(Book book, Func<string, Instant?> moment, Instant asOf, out IReadOnlyList<string> faults)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(moment);
        var found = new List<string>();
        if (book.Find(Code) is null)
        {
            var near = Near(book, Code).Take(6).ToArray();
            found.Add($"Nothing has the code “{Code.Trim()}”." + (near.Length > 0 ? $" Near it: {string.Join(", ", near)}." : " Look at the label again, or look the code up on the ledger page."));
        }

        Instant? Read(string text, string name)
        {
            if (text.Length > 0 && moment(text) is null)
            {
                found.Add($"“{text}” ({name}) is no date and time. Write it like 2025-09-15T06:00.");
            }

            return text.Length > 0 ? moment(text) : null;
        }

        var (from, until) = (Read(From, "from"), Read(Until, "until"));
        if (until <= from)
        {
            found.Add("The hours end before they begin: turn the two round.");
        }

        found.AddRange(NumberFaults());
        faults = found;
        return found.Count > 0 ? null : new TraceQuestion(Code.Trim()) { From = from, Until = until, AsOf = asOf, Threshold = Threshold };
    }

    /// <summary>What is wrong with the threshold and the beliefs, and what to do; empty where nothing is.</summary>
    public IEnumerable<string> NumberFaults()
    {
        if (Kilograms.Length > 0 && ReadKilograms() is null)
        {
            yield return $"“{Kilograms}” is no threshold. Give kilograms from 0 to 100000, with a point before decimals.";
        }

        if (Weights.Any(w => w.Length > 0) && ReadBeliefs() is null)
        {
            yield return "The beliefs are numbers of at least 0, one of them above 0; they are taken in proportion.";
        }
    }

    private static IEnumerable<string> Near(Book book, string code)
    {
        var word = code.Trim();
        return word.Length < 2 ? [] : book.Places.Where(p => p.Code.Contains(word, StringComparison.OrdinalIgnoreCase)
            || p.Name.Contains(word, StringComparison.OrdinalIgnoreCase) || p.Of.Contains(word, StringComparison.OrdinalIgnoreCase)).Select(p => p.Code);
    }

    private decimal? ReadKilograms() => decimal.TryParse(Kilograms, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var kilograms) && kilograms <= 100_000m ? kilograms : null;

    private Belief[]? ReadBeliefs()
    {
        if (Weights.All(w => w.Length == 0))
        {
            return null;
        }

        var beliefs = new List<Belief>();
        foreach (var (text, outflow) in Weights.Zip(OutflowWords.All))
        {
            if (!double.TryParse(text.Length == 0 ? "0" : text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var weight) || weight is < 0 or > 1000)
            {
                return null;
            }

            beliefs.Add(new Belief(outflow, weight));
        }

        return beliefs.Any(b => b.Weight > 0) ? [.. beliefs] : null;
    }
}
