using Evengrist.Milling.Learning;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Drift;

/// <summary>A measured figure of a dated test, the tuned model's and how that changes.</summary>
/// <param name="Test">Which test, from 0.</param>
/// <param name="What">The figure.</param>
/// <param name="Measured">As measured.</param>
/// <param name="Modelled">As the tuned model has it.</param>
/// <param name="ByKey">Change by each key, tears last.</param>
/// <param name="ByMoisture">Change for each point of moisture more.</param>
/// <param name="Sigma">What measuring it is off by.</param>
/// <param name="Shortfall">What the model is off by, the same at every test.</param>
internal sealed record DriftRow(int Test, string What, double Measured, double Modelled, Vector<double> ByKey, double ByMoisture, double Sigma, double Shortfall)
{
    /// <summary>Moisture by which a change with moisture is taken, points.</summary>
    public const double Wetter = 0.25;

    /// <summary>Every figure of every test.</summary>
    public static IReadOnlyList<DriftRow> Of(IReadOnlyList<DatedTest> tests, MillTuning tuning, IReadOnlyList<TuneKey> keys)
    {
        var values = Vector<double>.Build.Dense(keys.Count);
        values.SetSubVector(0, tuning.Values.Count, tuning.Values);
        return [.. tests.SelectMany((dated, at) =>
        {
            var test = dated.Test;
            var wetter = test with { Wheat = Wet(test.Wheat, Wetter) };
            return TestRows.Of(test, keys, values, TestErrors.Usual).Zip(TestRows.Of(wetter, keys, values, TestErrors.Usual), (row, wet) => new DriftRow(
                at, row.What, row.Measured, row.Figure.Value, row.Figure.Gradient, (wet.Figure.Value - row.Figure.Value) / Wetter,
                Math.Sqrt(Math.Max(0, (row.Sigma * row.Sigma) - (row.Figure.ModelError * row.Figure.ModelError))), row.Figure.ModelError * tuning.ScatterOf(row.Figure.Kind)));
        })];
    }

    /// <summary>Wheat of so many points of moisture more.</summary>
    public static MillWheat Wet(MillWheat wheat, double points) => wheat with { MoisturePercent = wheat.MoisturePercent + points };
}
