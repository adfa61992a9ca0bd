using System.Globalization;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>What people have decided, as typed: how much of a wheat goes into a flour, which share of its mix it is, how much of an offer is bought, from a day until another.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Choices">One for each day or week it holds for; empty where nothing was decided or something cannot be read.</param>
/// <param name="Words">What was decided, each in words.</param>
public sealed record DecidedAsk(TypedFields Fields, IReadOnlyList<SeasonChoice> Choices, IReadOnlyList<string> Words)
{
    /// <summary>How many can be typed at once.</summary>
    public const int Rows = 3;

    private const string Into = "use", Share = "share", Buy = "buy";

    /// <summary>What can be decided: key, words, unit.</summary>
    public static IReadOnlyList<(string Key, string Words, string Unit)> Kinds { get; } = [(Into, "wheat into flour", "t/week"), (Share, "share of a flour's mix", "%"), (Buy, "bought", "t/week")];

    /// <summary>Reads the fields.</summary>
    /// <param name="spec">The year.</param>
    /// <param name="typed">What was typed, by field.</param>
    public static DecidedAsk Of(SeasonSpec spec, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var (fields, choices, words) = (new TypedFields(typed), new List<SeasonChoice>(), new List<string>());
        for (var n = 0; n < Rows; n++)
        {
            var row = new Row(n, spec, fields);
            if (row.IsAsked && row.Read(choices) is { } said)
            {
                words.Add(said);
            }
        }

        return new DecidedAsk(fields, fields.Faults.Count == 0 ? choices : [], fields.Faults.Count == 0 ? words : []);
    }

    /// <summary>Wheats and offers that can be named; the days of the first weeks and the weeks after them are one offer.</summary>
    public static IReadOnlyList<string> WheatsOf(SeasonSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return [.. spec.Wheats.Select(w => w.Code), .. spec.Offers.Select(o => SpecFromTerms.OfferOf(o.Code)).Distinct()];
    }

    private sealed class Row
    {
        private readonly SeasonSpec spec;
        private readonly TypedFields fields;
        private readonly string key, kind, wheat, flour;

        public Row(int n, SeasonSpec spec, TypedFields fields)
        {
            (this.spec, this.fields, key) = (spec, fields, n.ToString(CultureInfo.InvariantCulture));
            (kind, wheat, flour) = (fields.Text("kind" + key, ""), fields.Text("wheat" + key, ""), fields.Text("flour" + key, ""));
            foreach (var name in (string[])["from", "until", "least", "most"])
            {
                fields.Text(name + key, "");
            }
        }

        public bool IsAsked => kind.Length > 0;

        public string? Read(List<SeasonChoice> choices)
        {
            var before = fields.Faults.Count;
            var (from, until) = (Day("from", spec.Start), default(LocalDate));
            until = Day("until", from);
            var (least, most) = (fields.Number("least" + key, "At least"), fields.Number("most" + key, "At most"));
            Check(from, until, least, most);
            if (fields.Faults.Count > before)
            {
                return null;
            }

            (int Number, SeasonPeriod Period)[] held = [.. spec.Periods.Index().Where(p => p.Item.Start <= until && p.Item.End > from)];
            var hours = kind == Into ? spec.Units.First(u => u.Code == spec.Flours.First(f => f.Code == flour).Unit).Hours : [];
            var all = kind == Into ? held.Sum(p => hours[p.Number]) : 0;
            if (kind == Into && all <= 0 && least > 0)
            {
                fields.Fault($"The unit that mills {flour} stands still from {from:uuuu-MM-dd} to {until:uuuu-MM-dd}: give days on which it mills.");
                return null;
            }

            foreach (var (t, period) in held)
            {
                // What goes into a flour is spread by the hours its unit mills.
                var times = kind == Share ? 0.01 : kind == Buy ? period.Weeks : all > 0 ? held.Sum(p => p.Period.Weeks) * hours[t] / all : 0;
                var (low, high) = ((least ?? 0) * times, (most ?? double.PositiveInfinity) * times);
                choices.AddRange(Codes(t).Select(code => kind switch
                {
                    Into => new UseChoice(code, flour, t, low, high),
                    Share => new ShareChoice(code, flour, t, low, Math.Min(1, high)),
                    _ => (SeasonChoice)new BuyChoice(code, t, low, high),
                }));
            }

            var unit = Kinds.First(k => k.Key == kind).Unit;
            var amount = (least, most) switch
            {
                ({ } a, { } b) when a == b => $"{N(a)} {unit}", ({ } a, { } b) => $"{N(a)} to {N(b)} {unit}", ({ } a, null) => $"at least {N(a)} {unit}", (_, var b) => $"at most {N(b ?? 0)} {unit}",
            };
            return $"{wheat}{(kind == Buy ? " bought" : kind == Into ? $" into {flour}" : $" of the mix of {flour}")}: {amount}, {from:uuuu-MM-dd} to {until:uuuu-MM-dd}";
        }

        private void Check(LocalDate from, LocalDate until, double? least, double? most)
        {
            if (!Kinds.Any(k => k.Key == kind))
            {
                fields.Fault($"“{kind}” is nothing that can be decided here.");
            }

            if (kind == Buy ? spec.Offers.All(o => SpecFromTerms.OfferOf(o.Code) != wheat) : !WheatsOf(spec).Contains(wheat))
            {
                fields.Fault(kind == Buy ? $"“{wheat}” is not on offer: choose an offer." : $"There is no wheat “{wheat}”: choose one.");
            }

            if (kind != Buy && spec.Flours.All(f => f.Code != flour))
            {
                fields.Fault("Into which flour? Choose one.");
            }

            if (from < spec.Start || until >= spec.End || until < from)
            {
                fields.Fault($"From {from:uuuu-MM-dd} until {until:uuuu-MM-dd}: give days from {spec.Start:uuuu-MM-dd} to {spec.End.PlusDays(-1):uuuu-MM-dd}, the first before the last.");
            }

            if (least is null && most is null)
            {
                fields.Fault("At least or at most how much? Give one of them, or both alike for what is fixed.");
            }

            if (least < 0 || most < 0 || least > most || (kind == Share && (least > 100 || most > 100)))
            {
                fields.Fault($"At least {N(least)}, at most {N(most)}: give numbers of 0 or more, the least below the most{(kind == Share ? ", at most 100 %" : "")}.");
            }
        }

        private LocalDate Day(string name, LocalDate otherwise) => fields[name + key].Length == 0 ? otherwise : fields.Day(name + key, name == "from" ? "From" : "Until", otherwise);

        private IEnumerable<string> Codes(int t) => spec.Wheats.Any(w => w.Code == wheat) ? [wheat] : spec.Offers.Where(o => SpecFromTerms.OfferOf(o.Code) == wheat && t >= o.First && t <= o.Last).Select(o => o.Code);

        private static string N(double? value) => value?.ToString("0.##", CultureInfo.InvariantCulture) ?? "nothing";
    }
}
