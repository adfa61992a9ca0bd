using System.Globalization;
using Evengrist.Quantities;

namespace Evengrist.Streams.Dividing;

/// <summary>One end of a limit of a flour, as a sum over its streams: Σ y·x·m ≥ 0, m what a stream has to spare on the scale that averages.</summary>
/// <param name="What">The property; none for the rule of identity, which is of ash and protein.</param>
/// <param name="IsLeast">Whether it is the least that is allowed.</param>
/// <param name="Value">The limit, usual unit; not used by the rule of identity.</param>
/// <param name="Basis">Basis of ash and protein.</param>
public sealed record LimitEnd(StreamProperty What, bool IsLeast, double Value, Basis Basis)
{
    /// <summary>Ash that lets a flour be called so: at most a twentieth of the protein and 0.35, moisture free.</summary>
    public static LimitEnd Identity(Basis basis) => new(StreamProperty.None, false, 0, basis);

    /// <summary>Whether it is the rule of identity.</summary>
    public bool IsIdentity => What == StreamProperty.None;

    /// <summary>In words: ash at most 0.46 % 14mb.</summary>
    public string Words => IsIdentity ? "ash that lets it be called flour"
        : string.Create(CultureInfo.InvariantCulture, $"{What.Words()} at {(IsLeast ? "least" : "most")} {Value:0.####} {What.Unit()}{(What is StreamProperty.Ash or StreamProperty.Protein ? $" {Basis}" : "")}");

    /// <summary>What has to be read on a stream that may go there.</summary>
    public IReadOnlyList<StreamProperty> Needs => IsIdentity ? [StreamProperty.Ash, StreamProperty.Protein] : [What];

    /// <summary>What a stream has to spare; below zero where it alone would miss it.</summary>
    public double Spare(MillStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return IsIdentity ? FlourIdentity.MostAshPercent(stream.ProteinPercent!.Value, Basis) - stream.AshPercent
            : (IsLeast != What.Falls() ? 1 : -1) * (What.OnScale(What.Read(stream)!.Value) - What.OnScale(Value));
    }

    /// <summary>Standard uncertainty of what it has to spare.</summary>
    public double Unsure(MillStream stream, StreamMethods methods)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(methods);
        return IsIdentity ? Math.Sqrt((methods.Ash * methods.Ash) + (methods.Protein * methods.Protein / 400))
            : What.SlopeAt(What.Read(stream)!.Value) * What.Uncertainty(What.Read(stream)!.Value, methods);
    }
}
