using Evengrist.Laboratory.Rings;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Mills beside each other, the worst first.</summary>
/// <param name="Mills">Each mill.</param>
/// <param name="Laboratories">Each laboratory of the ring.</param>
/// <param name="Methods">Precision of the method on samples where every laboratory gave the same number of results, two or more; empty where none.</param>
public sealed record LabMillsAnswer(IReadOnlyList<MillAnswer> Mills, IReadOnlyList<LaboratoryBias> Laboratories, IReadOnlyList<RingPrecisionAnswer> Methods)
{
    /// <summary>Answers a case.</summary>
    public static Reply<LabMillsAnswer> To(LabMillsCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var samples = posed.Ring.GroupBy(r => r.Sample).Where(s => InterlaboratoryModel.Fault([.. s]) is null).SelectMany(s => s).ToArray();
        return new(
            new LabMillsAnswer(
                [.. MillsModel.Of(posed.Mills, posed.Ring, posed.Lower, posed.Upper, posed.Reference).Select(MillAnswer.Of)], RingModel.Biases(posed.Ring, posed.Reference),
                samples.Length == 0 ? [] : [.. InterlaboratoryModel.Of(samples).Select(s => new RingPrecisionAnswer(s.Sample, s.Laboratories, s.Results, s.Mean, s.Repeatability, s.Reproducibility, s.Cochran, s.CochranLimits.At95))]), []);
    }
}

/// <summary>One mill.</summary>
/// <param name="Mill">The mill.</param>
/// <param name="Laboratory">Its laboratory.</param>
/// <param name="Mean">As reported.</param>
/// <param name="Deviation">As reported.</param>
/// <param name="Cpk">As reported.</param>
/// <param name="CpkFrom">Lower confidence limit of it, 95 %.</param>
/// <param name="CpkTo">Upper confidence limit.</param>
/// <param name="PercentOut">Outside the limits as reported, if nearly normal.</param>
/// <param name="LaboratoryBias">By how much its laboratory reads high; null where it cannot be told apart.</param>
/// <param name="LaboratoryBiasDeviation">One standard deviation of that; null where it is not known.</param>
/// <param name="FlourCpk">Cpk with the bias taken out; null with it.</param>
/// <param name="FlourCpkFrom">Lower confidence limit of it, 95 %, the bias' own ± in it; null where that is not known.</param>
/// <param name="FlourCpkTo">Upper confidence limit.</param>
/// <param name="FlourPercentOut">Outside with the bias taken out; null with it.</param>
/// <param name="Remark">What has to be known; may be empty.</param>
public sealed record MillAnswer(
    string Mill, string Laboratory, double Mean, double Deviation, double Cpk, double CpkFrom, double CpkTo, double PercentOut, double? LaboratoryBias, double? LaboratoryBiasDeviation, double? FlourCpk, double? FlourCpkFrom, double? FlourCpkTo,
    double? FlourPercentOut, string Remark)
{
    internal static MillAnswer Of(MillStanding m) => new(
        m.Figures.Mill, m.Figures.Laboratory, m.Figures.Mean, m.Figures.Deviation, m.Reported.Cpk, m.Reported.CpkBounds.Lower, m.Reported.CpkBounds.Upper, 100 * m.ShareOut, m.Bias?.Bias, m.Bias?.Deviation, m.Flour?.Cpk,
        m.FlourBounds?.Lower, m.FlourBounds?.Upper, m.Flour is { } f ? 100 * (f.ShareAbove + f.ShareBelow) : null, m.Remark);
}

/// <summary>Precision of the method on one sample.</summary>
public sealed record RingPrecisionAnswer(string Sample, int Laboratories, int Results, double Mean, double Repeatability, double Reproducibility, double Cochran, double CochranLimit);
