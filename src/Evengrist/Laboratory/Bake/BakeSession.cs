using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Laboratory.Bake;

/// <summary>One bake: several flours and the control beside them, on one day, by one baker, in one oven. Kept as a paper.</summary>
/// <param name="Code">Its own code.</param>
/// <param name="At">When it was baked.</param>
/// <param name="Baker">Who baked.</param>
/// <param name="Control">The control flour, one of the loaves'.</param>
/// <param name="Loaves">The loaves.</param>
/// <param name="Flours">Where each flour came from, so that its wheat can be traced; a flour from elsewhere is left out.</param>
/// <param name="Remark">Anything to remember; may be empty.</param>
/// <param name="Formula">Which formula was baked by, with its version; empty where nobody said.</param>
/// <param name="Steps">The steps as they were done; null where none was timed.</param>
/// <param name="Rankings">How tasters put the flours; null where none tasted.</param>
/// <param name="Reason">Why what was asked about is right; empty where nothing was.</param>
public sealed record BakeSession(
    string Code, Instant At, string Baker, string Control, IReadOnlyList<BakedLoaf> Loaves, IReadOnlyList<FlourOrigin> Flours, string Remark = "",
    string Formula = "", IReadOnlyList<BakedStep>? Steps = null, IReadOnlyList<TasterRanking>? Rankings = null, string Reason = "")
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "bake";

    private const int LongestCode = 40, MostLoaves = 60, MostSteps = 20;

    /// <summary>Its flours: the control first, then by name.</summary>
    public IReadOnlyList<string> FlourNames() => [.. Loaves.Select(l => l.Flour).Distinct().OrderBy(f => f == Control ? 0 : 1).ThenBy(f => f, StringComparer.Ordinal)];

    /// <summary>What is odd and to be confirmed with a reason, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Questions() => [.. (Steps ?? []).SelectMany(s => s.Questions()), .. Loaves.SelectMany(l => l.Questions())];

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Code) || Code.Trim() != Code || Code.Length > LongestCode ? [$"A bake has a code of 1 to {LongestCode} characters without space at either end."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Baker) ? ["Say who baked."] : Array.Empty<string>(),
        .. Loaves.Count is >= 1 and <= MostLoaves ? Array.Empty<string>() : [$"A bake has 1 to {MostLoaves} loaves; read {Loaves.Count}."],
        .. Loaves.SelectMany(l => l.Faults()).Distinct(),
        .. Loaves.Count == 0 || Loaves.Any(l => l.Flour == Control) ? Array.Empty<string>() : [$"No loaf is of the control \"{Control}\": bake the control beside in the same session, or say which flour it is."],
        .. Loaves.GroupBy(l => l.Dough).Where(g => g.Select(l => l.Flour).Distinct().Count() > 1).Select(g => $"Dough {g.Key} is of two flours; give each dough its own number."),
        .. Flours.Where(f => Loaves.All(l => l.Flour != f.Flour)).Select(f => $"Flour {f.Flour} has no loaf; leave it out."),
        .. Steps is { Count: > MostSteps } ? [$"A bake has up to {MostSteps} steps; read {Steps.Count}."] : Array.Empty<string>(),
        .. (Steps ?? []).SelectMany(s => s.Faults()),
        .. (Rankings ?? []).SelectMany(r => r.Faults(FlourNames())),
        .. (Rankings ?? []).GroupBy(r => r.Taster, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"{g.Key} ranked twice; keep one ranking of each taster."),
    ];

    /// <summary>As JSON.</summary>
    public string ToJson() => LabJson.Write(this);

    /// <summary>Reads a bake and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="session">The bake; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out BakeSession? session, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, b => b.Loaves.Any(l => l is null) || b.Flours.Any(f => f is null) || b.Steps?.Any(s => s is null) == true || b.Rankings?.Any(r => r?.Places is null || r.Places.Any(p => p is null or { Count: 0 })) == true ? ["A line of the bake is null or empty."] : b.Faults(), out session, out faults);
}

/// <summary>Where a flour of a bake came from.</summary>
/// <param name="Flour">The flour, as on the loaves.</param>
/// <param name="Place">Code of the place it was taken from: a flour bin, a pallet, a bulk load.</param>
public sealed record FlourOrigin(string Flour, string Place);
