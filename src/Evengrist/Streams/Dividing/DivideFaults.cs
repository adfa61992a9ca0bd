using System.Globalization;

namespace Evengrist.Streams.Dividing;

/// <summary>What is wrong with a question about the best divide.</summary>
public static class DivideFaults
{
    /// <summary>Every fault, each a sentence that says what to do; empty where there is none.</summary>
    public static IReadOnlyList<string> Of(DivideSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Table.Faults() is { Count: > 0 } table)
        {
            return table;
        }

        var places = spec.Places.Select(p => p.Code).ToHashSet(StringComparer.Ordinal);
        var streams = spec.Table.Streams.Select(s => s.Code).ToHashSet(StringComparer.Ordinal);
        IReadOnlyList<string> faults =
        [
            .. OfPlaces(spec.Flours, spec.Rest, spec.HoursPerDay),
            .. spec.Sure is null or (>= 0.5 and < 1) ? Array.Empty<string>() : [Say($"A limit is kept to a chance from 50 % up to, not including, 100 %; got {100 * spec.Sure.Value} %.")],
            .. spec.RateTonnesPerHour is > 0 and <= 1000 ? Array.Empty<string>() : [Say($"Tonnes of wheat an hour lie above 0 and at most at 1000; got {spec.RateTonnesPerHour}.")],
            .. spec.Valves.Where(v => !streams.Contains(v.Stream)).Select(v => $"There is a valve for {v.Stream}, and no such stream in the survey."),
            .. spec.Valves.GroupBy(v => v.Stream, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"The valve of {g.Key} stands there {g.Count()} times: give it once."),
            .. spec.Valves.SelectMany(v => (v.May ?? []).Append(v.Locked).Append(v.Now).OfType<string>().Where(c => !places.Contains(c)).Distinct().Select(c => $"{v.Stream} may go to {c}, and there is no such flour: there are {string.Join(", ", places)}.")),
        ];
        return faults.Count > 0 ? faults : [.. Unread(spec)];
    }

    /// <summary>What is wrong with the flours alone.</summary>
    public static IReadOnlyList<string> OfPlaces(IReadOnlyList<FlourWish> flours, FlourWish rest, double hoursPerDay)
    {
        ArgumentNullException.ThrowIfNull(flours);
        ArgumentNullException.ThrowIfNull(rest);
        FlourWish[] places = [.. flours, rest];
        return
        [
            .. flours.Count is 0 or > DivideSpec.MostFlours ? [$"There are {flours.Count} flours: give 1 to {DivideSpec.MostFlours}."] : Array.Empty<string>(),
            .. places.Any(p => string.IsNullOrWhiteSpace(p.Code)) ? ["A flour has no name: give it one."] : Array.Empty<string>(),
            .. places.GroupBy(p => p.Code, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: give each flour once, and the rest another name."),
            .. hoursPerDay is > 0 and <= 24 ? Array.Empty<string>() : [Say($"Hours a day lie above 0 and at most at 24; got {hoursPerDay}.")],
            .. places.Where(p => Math.Abs(p.PricePerTonne) > 100_000m).Select(p => Say($"{p.Code}: a price lies between -100000 and 100000; got {p.PricePerTonne}.")),
            .. rest is { LeastYield: null, MostYield: null, Limits.Count: 0, CalledFlour: false } ? Array.Empty<string>() : [$"{rest.Code} takes what goes to no flour and has no limits: make it a flour, or leave them out."],
            .. flours.SelectMany(OfFlour),
        ];
    }

    private static IEnumerable<string> OfFlour(FlourWish flour)
    {
        foreach (var yield in new[] { flour.LeastYield, flour.MostYield }.OfType<double>().Where(y => !(y is >= 0 and <= 100)))
        {
            yield return Say($"{flour.Code}: its yield lies from 0 to 100 % of the wheat; got {yield}.");
        }

        if (flour.LeastYield > flour.MostYield)
        {
            yield return Say($"{flour.Code}: at least {flour.LeastYield} % of the wheat is more than at most {flour.MostYield} %: swap them, or leave one out.");
        }

        foreach (var limit in flour.Limits)
        {
            if (!StreamScale.All.Contains(limit.What))
            {
                yield return $"{flour.Code}: a limit is of ash, protein, falling number or starch damage.";
                continue;
            }

            if (limit.Least is null && limit.Most is null)
            {
                yield return $"{flour.Code}: the limit on {limit.What.Words()} has neither a least nor a most: give one.";
            }

            var (least, most) = limit.What.Range();
            foreach (var end in new[] { limit.Least, limit.Most }.OfType<double>().Where(e => !(e >= least && e <= most)))
            {
                yield return Say($"{flour.Code}: a limit on {limit.What.Words()} lies from {least} to {most} {limit.What.Unit()}; got {end}.");
            }

            if (limit.Least > limit.Most)
            {
                yield return Say($"{flour.Code}: {limit.What.Words()} at least {limit.Least} is more than at most {limit.Most}: swap them, or leave one out.");
            }
        }
    }

    private static IEnumerable<string> Unread(DivideSpec spec) =>
        from flour in spec.Flours
        from what in flour.Ends(spec.Table.Basis).SelectMany(e => e.Needs).Distinct()
        let unread = spec.Table.Streams.Where(s => spec.MayGo(s, flour) && what.Read(s) is null).Select(s => s.Code).ToArray()
        where unread.Length > 0
        select $"{flour.Code} has a limit on {what.Words()}, which was not read for {string.Join(", ", unread.Take(6))}{(unread.Length > 6 ? " and more" : "")}: read it, take the limit out, or say that they may not go to {flour.Code}.";

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
