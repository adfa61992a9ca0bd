using System.Globalization;
using Evengrist.Milling.Sheet;

namespace Evengrist.Milling.OnPaper;

/// <summary>Settings of a flow sheet to be tried: gaps, cloths, air, and where an outlet goes. Passages, cloths and products stay what they are.</summary>
public sealed record SheetChange
{
    /// <summary>Roll gap, µm, by passage.</summary>
    public IReadOnlyDictionary<string, double> GapMicrometres { get; init; } = new Dictionary<string, double>();

    /// <summary>Speed of a purifier's air, m/s, by passage.</summary>
    public IReadOnlyDictionary<string, double> AirMetresPerSecond { get; init; } = new Dictionary<string, double>();

    /// <summary>Cloths exchanged.</summary>
    public IReadOnlyList<ClothChange> Cloths { get; init; } = [];

    /// <summary>Outlets led elsewhere.</summary>
    public IReadOnlyList<OutletChange> Outlets { get; init; } = [];

    /// <summary>What of it cannot be done to a sheet, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults(FlowSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var known = sheet.Passages.ToDictionary(p => p.Code, StringComparer.Ordinal);
        string[] own =
        [
            .. GapMicrometres.Keys.Where(c => !known.TryGetValue(c, out var p) || p.Rolls is null).Select(c => $"{c} is no passage with rolls on this flow sheet, so its gap cannot be set."),
            .. AirMetresPerSecond.Keys.Where(c => !known.TryGetValue(c, out var p) || p.AirMetresPerSecond is null).Select(c => $"{c} is no purifier on this flow sheet, so its air cannot be set."),
            .. Cloths.Where(c => !known.TryGetValue(c.Passage, out var p) || !p.Cloths.Any(x => x.ApertureMicrometres == c.FromMicrometres)).Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Passage} has no cloth of {c.FromMicrometres:0.#} µm to be exchanged.")),
            .. Outlets.Where(o => !known.TryGetValue(o.Passage, out var p) || o.Outlet < 0 || o.Outlet >= p.Outlets.Count()).Select(o => $"{o.Passage} has no outlet {o.Outlet}: they count from 0, what air lifts first, then each cloth's, then the rest."),
        ];
        return own.Length > 0 ? own : Apply(sheet).Faults();
    }

    /// <summary>The sheet with the change made; what a change does not name stays.</summary>
    public FlowSheet Apply(FlowSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet with { Passages = [.. sheet.Passages.Select(Changed)] };
    }

    private Passage Changed(Passage passage)
    {
        var lifted = passage.Lifted.Count > 0 ? 1 : 0;
        var count = passage.Outlets.Count();
        IReadOnlyList<Spout> To(int outlet, IReadOnlyList<Spout> otherwise) => Outlets.LastOrDefault(o => o.Passage == passage.Code && o.Outlet == outlet)?.To ?? otherwise;
        return passage with
        {
            Rolls = passage.Rolls is { } rolls && GapMicrometres.TryGetValue(passage.Code, out var gap) ? rolls with { GapMicrometres = gap } : passage.Rolls,
            AirMetresPerSecond = AirMetresPerSecond.TryGetValue(passage.Code, out var air) ? air : passage.AirMetresPerSecond,
            Lifted = lifted > 0 ? To(0, passage.Lifted) : passage.Lifted,
            Cloths = [.. passage.Cloths.Select((c, i) => c with { ApertureMicrometres = Cloths.LastOrDefault(x => x.Passage == passage.Code && x.FromMicrometres == c.ApertureMicrometres)?.ToMicrometres ?? c.ApertureMicrometres, To = To(lifted + i, c.To) })],
            Rest = To(count - 1, passage.Rest),
        };
    }
}

/// <summary>A cloth exchanged for another.</summary>
/// <param name="Passage">Code of the passage.</param>
/// <param name="FromMicrometres">Opening of the cloth there is, µm.</param>
/// <param name="ToMicrometres">Opening of the cloth tried, µm.</param>
public sealed record ClothChange(string Passage, double FromMicrometres, double ToMicrometres);

/// <summary>An outlet led elsewhere.</summary>
/// <param name="Passage">Code of the passage.</param>
/// <param name="Outlet">Which outlet, from 0: what air lifts first, then each cloth's, then the rest.</param>
/// <param name="To">Where it goes.</param>
public sealed record OutletChange(string Passage, int Outlet, IReadOnlyList<Spout> To);
