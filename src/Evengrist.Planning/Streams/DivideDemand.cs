using System.Globalization;
using Evengrist.Quantities;
using Evengrist.Streams.Dividing;

namespace Evengrist.Planning.Streams;

/// <summary>One thing that was demanded of a divide and could be given up.</summary>
/// <param name="Words">In words.</param>
/// <param name="Without">The question without it.</param>
internal sealed record DivideDemand(string Words, Func<DivideSpec, DivideSpec> Without)
{
    /// <summary>Every demand of a question; first what is given up first where the others clash without it.</summary>
    public static IReadOnlyList<DivideDemand> AllOf(DivideSpec spec) =>
    [
        new DivideDemand("spouts that send a stream whole", s => s with { Valves = [.. s.Table.Streams.Select(t => s.ValveOf(t) with { Splits = true })] }),
        .. spec.Sure is { } sure ? [new DivideDemand(string.Create(CultureInfo.InvariantCulture, $"each limit kept to {100 * sure:0.##} %"), s => s with { Sure = null })] : Array.Empty<DivideDemand>(),
        .. spec.Flours.SelectMany(f => OfFlour(f, spec.Table.Basis)),
        .. spec.Valves.Where(v => v.Locked is not null).Select(v => new DivideDemand($"{v.Stream} locked to {v.Locked}", s => Valves(s, v.Stream, x => x with { Locked = null }))),
        .. spec.Valves.Where(v => v.Locked is null && v.May is not null).Select(v => new DivideDemand($"{v.Stream} only to {string.Join(" or ", v.May!.Append(spec.Rest.Code))}", s => Valves(s, v.Stream, x => x with { May = null }))),
    ];

    private static IEnumerable<DivideDemand> OfFlour(FlourWish flour, Basis basis)
    {
        if (flour.LeastYield is { } least)
        {
            yield return new DivideDemand(string.Create(CultureInfo.InvariantCulture, $"{flour.Code} at least {least:0.##} % of the wheat"), s => Flour(s, flour.Code, f => f with { LeastYield = null }));
        }

        if (flour.MostYield is { } most)
        {
            yield return new DivideDemand(string.Create(CultureInfo.InvariantCulture, $"{flour.Code} at most {most:0.##} % of the wheat"), s => Flour(s, flour.Code, f => f with { MostYield = null }));
        }

        foreach (var (n, limit) in flour.Limits.Index())
        {
            foreach (var end in new FlourWish(flour.Code, 0) { Limits = [limit] }.Ends(basis))
            {
                yield return new DivideDemand(
                    string.Create(CultureInfo.InvariantCulture, $"{flour.Code} {end.Words}"),
                    s => Flour(s, flour.Code, f => f with { Limits = [.. f.Limits.Select((l, i) => i != n ? l : end.IsLeast ? l with { Least = null } : l with { Most = null })] }));
            }
        }

        if (flour.CalledFlour)
        {
            yield return new DivideDemand($"{flour.Code} ash that lets it be called flour", s => Flour(s, flour.Code, f => f with { CalledFlour = false }));
        }
    }

    private static DivideSpec Flour(DivideSpec spec, string code, Func<FlourWish, FlourWish> change) => spec with { Flours = [.. spec.Flours.Select(f => f.Code == code ? change(f) : f)] };

    private static DivideSpec Valves(DivideSpec spec, string stream, Func<StreamValve, StreamValve> change) => spec with { Valves = [.. spec.Valves.Select(v => v.Stream == stream ? change(v) : v)] };
}
