using System.Globalization;
using Evengrist.Mix;

namespace Evengrist.Planning.Mix;

/// <summary>One thing that is demanded of a mix and could be left out.</summary>
/// <param name="Words">What is demanded, in words.</param>
/// <param name="Without">The same question without it.</param>
/// <param name="End">The end of a limit that it is; null for gates and shares.</param>
internal sealed record Demand(string Words, Func<MixSpec, MixSpec> Without, LimitEnd? End = null)
{
    /// <summary>All that is demanded: what hinders gates first, so that a clash is told in limits of quality where it can be.</summary>
    public static IReadOnlyList<Demand> AllOf(MixSpec spec) => [.. Gates(spec), .. Bins(spec), .. Classes(spec), .. spec.Limits.SelectMany(l => l.Ends).Select(Limit)];

    private static Demand Limit(LimitEnd end) => new(end.Words, s => s with
    {
        Limits = [.. s.Limits.Select(l => l.What != end.Limit.What || l.On != end.Limit.On ? l : end.IsLeast ? l with { Least = null } : l with { Most = null })],
    }, end);

    private static IEnumerable<Demand> Gates(MixSpec spec)
    {
        var gates = spec.Gates;
        if (spec.StepShare is { } step)
        {
            yield return new(Say($"gates in steps of {100 * step:0.###} %"), s => s with { Gates = s.Gates with { StepPercent = null, StepTonnesPerHour = null } });
        }

        if (gates.MostGates is { } most)
        {
            yield return new(Say($"at most {most} gates open"), s => s with { Gates = s.Gates with { MostGates = null } });
        }

        if (spec.LeastOpen > 0)
        {
            yield return new(Say($"an open gate gives at least {100 * spec.LeastOpen:0.##} %"), s => s with { Gates = s.Gates with { LeastOpenShare = null, LeastTonnesPerHour = null } });
        }

        if (gates.MostTonnesPerHour is { } feeder)
        {
            yield return new(Say($"a feeder gives at most {feeder:0.##} t/h"), s => s with { Gates = s.Gates with { MostTonnesPerHour = null } });
        }
    }

    private static IEnumerable<Demand> Bins(MixSpec spec)
    {
        foreach (var bin in spec.Bins)
        {
            if (bin.LockedShare is { } locked)
            {
                yield return new(Say($"the gate of {bin.Code} locked at {100 * locked:0.##} %"), s => Change(s, bin.Code, b => b with { LockedShare = null }));
            }

            if (bin.LeastShare > 0)
            {
                yield return new(Say($"at least {100 * bin.LeastShare:0.##} % from {bin.Code}"), s => Change(s, bin.Code, b => b with { LeastShare = 0 }));
            }

            if (bin.MostShare < 1)
            {
                yield return new(Say($"at most {100 * bin.MostShare:0.##} % from {bin.Code}"), s => Change(s, bin.Code, b => b with { MostShare = 1 }));
            }

            if (bin.Tonnes / (spec.RateTonnesPerHour * spec.Hours) is < 1)
            {
                yield return new(Say($"{bin.Code} has {bin.Tonnes:0.#} t for {spec.Hours:0.#} h"), s => Change(s, bin.Code, b => b with { Tonnes = null }));
            }
        }
    }

    private static IEnumerable<Demand> Classes(MixSpec spec)
    {
        foreach (var part in spec.Classes)
        {
            if (part.Least > 0)
            {
                yield return new(Say($"at least {100 * part.Least:0.##} % {part.Class}"), s => s with { Classes = [.. s.Classes.Select(c => c.Class == part.Class ? c with { Least = 0 } : c)] });
            }

            if (part.Most < 1)
            {
                yield return new(Say($"at most {100 * part.Most:0.##} % {part.Class}"), s => s with { Classes = [.. s.Classes.Select(c => c.Class == part.Class ? c with { Most = 1 } : c)] });
            }
        }
    }

    private static MixSpec Change(MixSpec spec, string code, Func<MixBin, MixBin> change) => spec with { Bins = [.. spec.Bins.Select(b => b.Code == code ? change(b) : b)] };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
