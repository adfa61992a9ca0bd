using Evengrist.Laboratory.Watch;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Biases set in the laboratory's instruments: papers, one version for each setting of an instrument and property. None is ever changed.</summary>
public static class InstrumentBiases
{
    /// <summary>Every setting with who kept it, the newest first.</summary>
    public static IReadOnlyList<(BiasSetting Setting, string By)> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(BiasSetting.PaperKind).All().Select(p => (Setting: BiasSetting.TryRead(p.Json, out var setting, out _) ? setting : null, p.By)).Where(s => s.Setting is not null).Select(s => (s.Setting!, s.By)).OrderByDescending(s => s.Item1.At)];
    }

    /// <summary>Keeps a setting; every fault where it cannot be, and then nothing is kept. The same setting again is the same.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="setting">What was set.</param>
    /// <param name="by">Who set it.</param>
    /// <param name="now">The present moment: none lies after it.</param>
    public static IReadOnlyList<string> Keep(Mill mill, BiasSetting setting, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(setting);
        var earlier = All(mill).Select(s => s.Setting).Where(s => s.Code == setting.Code && s.At < setting.At).MaxBy(s => s.At);
        string[] faults =
        [
            .. setting.Faults(),
            .. setting.At > now ? [$"The setting lies in the future: {setting.At}."] : Array.Empty<string>(),
            .. earlier is not null && earlier.New != setting.Old ? [FormattableString.Invariant($"The bias was set to {earlier.New} at {earlier.At}: the old one is that, not {setting.Old}.")] : Array.Empty<string>(),
        ];
        if (faults.Length == 0)
        {
            var (shelf, json) = (mill.Papers(BiasSetting.PaperKind), setting.ToJson());
            if (!shelf.All().Any(p => p.Json == json))
            {
                shelf.KeepNext(setting.Code, json, by);
            }
        }

        return faults;
    }
}
