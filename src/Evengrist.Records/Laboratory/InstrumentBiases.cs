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
        return [.. mill.Papers(BiasSetting.PaperKind).All().Read<BiasSetting>(BiasSetting.TryRead).Select(p => (p.Value, p.Paper.By)).OrderByDescending(s => s.Value.At)];
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
            mill.Papers(BiasSetting.PaperKind).KeepOnce(setting.Code, setting.ToJson(), by);
        }

        return faults;
    }
}
