using Evengrist.Laboratory.Bake;

namespace Evengrist.Records.Laboratory;

/// <summary>Blends that were measured: papers by code; a correction is the next version.</summary>
public static class MeasuredBlends
{
    /// <summary>The newest version of every blend, by code.</summary>
    public static IReadOnlyList<(MeasuredBlend Blend, int Version, string By)> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(MeasuredBlend.PaperKind).NewestOfEach().Read<MeasuredBlend>(MeasuredBlend.TryRead).Select(b => (b.Value, b.Paper.Version, b.Paper.By))];
    }

    /// <summary>A guess of a blend, moved by what the kept blends of the same property were off.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="property">One of <see cref="MeasuredBlend.Properties"/>.</param>
    /// <param name="parts">Its flours, without faults.</param>
    public static BlendGuess Guess(Mill mill, string property, IReadOnlyList<BlendPart> parts) =>
        BlendGuess.Of([.. parts.Select(p => (p.Share, p.Value))], [.. Newest(mill).Where(b => b.Blend.Property == property).Select(b => (b.Blend.Linear, b.Blend.Measured))]);

    /// <summary>Keeps a blend as the next version of its code; every fault where it cannot be, and then nothing is kept.</summary>
    /// <returns>The version; 0 where there are faults.</returns>
    public static (int Version, IReadOnlyList<string> Faults) Keep(Mill mill, MeasuredBlend blend, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(blend);
        string[] faults = [.. blend.Faults(), .. string.IsNullOrWhiteSpace(by) ? ["Say who keeps it."] : Array.Empty<string>()];
        return faults.Length > 0 ? (0, faults) : (mill.Papers(MeasuredBlend.PaperKind).KeepNext(blend.Code, blend.ToJson(), by), []);
    }
}
