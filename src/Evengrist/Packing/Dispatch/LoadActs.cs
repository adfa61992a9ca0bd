using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>What a named person does with a load, but for sending it off, which the ledger has its part in. Each gives the load as it is afterwards, or why not.</summary>
public static class LoadActs
{
    private const int Longest = 300;

    /// <summary>Scans a package onto it.</summary>
    /// <param name="load">The load.</param>
    /// <param name="package">The package as it is known now.</param>
    /// <param name="findings">What is said of it, by <see cref="ScanModel"/>.</param>
    /// <param name="who">Who scans, when, and why all the same where something is asked.</param>
    public static LoadAnswer Scan(DispatchLoad load, RampPackage package, IReadOnlyList<LoadFinding> findings, Act who)
    {
        ArgumentNullException.ThrowIfNull(package);
        ArgumentNullException.ThrowIfNull(findings);
        var loaded = new LoadedPackage(package.Code, who.At, who.By) { Reason = findings.Any(f => f.Weight == FindingWeight.Ask) ? who.Reason : "", Said = [.. findings.Select(f => f.Words)] };
        return Do(load, who, [.. findings, .. load.Sealed is null ? Array.Empty<LoadFinding>() : [LoadFinding.Stop("It is sealed. Break the seal with a reason first.")]], l => l with { Packages = [.. l.Packages, loaded] });
    }

    /// <summary>Takes a package off again.</summary>
    public static LoadAnswer TakeOff(DispatchLoad load, string code, Act who)
    {
        var there = load.Packages.FirstOrDefault(p => p.Code.Equals(code?.Trim(), StringComparison.OrdinalIgnoreCase));
        return Do(load, who,
            [
                .. there is null ? [LoadFinding.Stop($"{code} is not on load {load.Number}.")] : Array.Empty<LoadFinding>(), .. Why(who),
                .. load.Sealed is null ? Array.Empty<LoadFinding>() : [LoadFinding.Stop("It is sealed. Break the seal with a reason first.")],
            ],
            l => l with { Packages = [.. l.Packages.Where(p => p != there)], Unloaded = [.. l.Unloaded, new(there!.Code, there.At, who.At, who.By, who.Reason)] });
    }

    /// <summary>Answers a point of the check list; one that is not good says what was seen, and one that is good after it was not how it was mended.</summary>
    public static LoadAnswer Answer(DispatchLoad load, string point, bool isGood, DispatchRules rules, Act who)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var asked = rules.PointsOf(load).FirstOrDefault(p => p.Code.Equals(point?.Trim(), StringComparison.OrdinalIgnoreCase));
        var failed = asked is not null && load.AnswerOf(asked.Code) is { IsGood: false };
        return Do(load, who,
            [
                .. asked is null ? [LoadFinding.Stop($"The check list has no point “{point}”.")] : Array.Empty<LoadFinding>(),
                .. !isGood && who.Reason.Length == 0 ? [LoadFinding.Stop("Say what was seen.")] : Array.Empty<LoadFinding>(),
                .. isGood && failed && who.Reason.Length == 0 ? [LoadFinding.Stop("It failed before: say how it was mended.")] : Array.Empty<LoadFinding>(),
            ],
            l => l with { Answers = [.. l.Answers, new(asked!.Code, isGood, who.At, who.By) { Note = who.Reason }] });
    }

    /// <summary>Enters what the trailer carried before.</summary>
    public static LoadAnswer Ask(DispatchLoad load, string previous, string washTicket, decimal? celsius, Act who) => Do(load, who,
        [
            .. string.IsNullOrWhiteSpace(previous) || previous.Length > Longest ? [LoadFinding.Stop("Enter what it carried before, in a word or two.")] : Array.Empty<LoadFinding>(),
            .. celsius is < -60 or > 90 ? [LoadFinding.Stop("A trailer is −60 to 90 °C inside.")] : Array.Empty<LoadFinding>(),
        ],
        l => l with { History = new(previous.Trim(), who.At, who.By) { WashTicket = washTicket.Trim(), Celsius = celsius } });

    /// <summary>Puts seals on.</summary>
    public static LoadAnswer Seal(DispatchLoad load, IReadOnlyList<string> numbers, Act who)
    {
        string[] seals = [.. (numbers ?? []).Select(n => n.Trim()).Where(n => n.Length > 0)];
        return Do(load, who,
            [
                .. seals.Length == 0 ? [LoadFinding.Stop("Enter the number of each seal.")] : Array.Empty<LoadFinding>(),
                .. seals.Distinct(StringComparer.OrdinalIgnoreCase).Count() < seals.Length ? [LoadFinding.Stop("A seal's number stands twice.")] : Array.Empty<LoadFinding>(),
                .. load.Packages.Count == 0 ? [LoadFinding.Stop("Nothing stands on it yet: load it first.")] : Array.Empty<LoadFinding>(),
                .. load.Sealed is { } already ? [LoadFinding.Stop($"It is sealed already, by {already.By} on {already.At}. Break the seal with a reason first.")] : Array.Empty<LoadFinding>(),
            ],
            l => l with { Sealed = new(seals, who.At, who.By) });
    }

    /// <summary>Breaks the seals again before it left, as to take a package off.</summary>
    public static LoadAnswer Unseal(DispatchLoad load, Act who) => Do(load, who,
        [.. load.Sealed is null ? [LoadFinding.Stop("It is not sealed.")] : Array.Empty<LoadFinding>(), .. Why(who)],
        l => l with { Sealed = null });

    /// <summary>Turns the trailer away; what stands on it is off again.</summary>
    public static LoadAnswer TurnAway(DispatchLoad load, Act who) => Do(load, who, Why(who), l => l with
    {
        Away = new(who.At, who.By, who.Reason), Packages = [], Unloaded = [.. l.Unloaded, .. l.Packages.Select(p => new UnloadedPackage(p.Code, p.At, who.At, who.By, "trailer turned away"))],
    });

    /// <summary>Sends it off, as far as the load itself is concerned: the ledger has its say besides.</summary>
    /// <param name="load">The load.</param>
    /// <param name="left">How it leaves.</param>
    /// <param name="findings">What is said of it, by <see cref="DepartureModel"/>.</param>
    /// <param name="who">Who sends it off, when, and why all the same where something is asked.</param>
    public static LoadAnswer SendOff(DispatchLoad load, Departure left, IReadOnlyList<LoadFinding> findings, Act who) => Do(load, who, findings, l => l with { Departed = left });

    /// <summary>Does an act, unless it is stopped, or asked about and nothing is said.</summary>
    internal static LoadAnswer Do(DispatchLoad load, Act who, IReadOnlyList<LoadFinding> findings, Func<DispatchLoad, DispatchLoad> then)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(who);
        IReadOnlyList<LoadFinding> all =
        [
            .. who.By.Length == 0 ? [LoadFinding.Stop("Say who you are first: every act at the ramp carries a name.")] : Array.Empty<LoadFinding>(),
            .. load.IsOpen ? Array.Empty<LoadFinding>() : [LoadFinding.Stop(Over(load))],
            .. who.Reason.Length > Longest ? [LoadFinding.Stop($"A reason has at most {Longest} characters.")] : Array.Empty<LoadFinding>(), .. findings,
        ];
        return new(LoadFinding.Bar(all, who.Reason) ? null : then(load), all);
    }

    private static string Over(DispatchLoad load) => load.Departed is { } left ? $"Load {load.Number} left on {left.At}, sent off by {left.By}. What comes back is taken in as a return."
        : $"The trailer of load {load.Number} was turned away on {load.Away!.At} by {load.Away.By}. Plan another load.";

    private static LoadFinding[] Why(Act who) => who.Reason.Length == 0 ? [LoadFinding.Stop("Say why.")] : [];
}

/// <summary>Who does something at the ramp, and when.</summary>
public sealed record Act
{
    /// <summary>An act.</summary>
    /// <param name="by">The person; outer blanks do not matter.</param>
    /// <param name="at">When.</param>
    /// <param name="reason">Why, or what was seen; outer blanks do not matter.</param>
    public Act(string? by, Instant at, string? reason = "") => (By, At, Reason) = (by?.Trim() ?? "", at, reason?.Trim() ?? "");

    /// <summary>The named person; empty where nobody is named.</summary>
    public string By { get; }

    /// <summary>When.</summary>
    public Instant At { get; }

    /// <summary>Why, or what was seen; may be empty.</summary>
    public string Reason { get; }
}

/// <summary>What became of an act.</summary>
/// <param name="Load">The load as it is afterwards; null where nothing was done.</param>
/// <param name="Findings">What was said: what stopped it, what was asked, what is cautioned.</param>
public sealed record LoadAnswer(DispatchLoad? Load, IReadOnlyList<LoadFinding> Findings);
