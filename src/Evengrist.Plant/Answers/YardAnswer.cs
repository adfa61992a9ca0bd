using Evengrist.Intake;

namespace Evengrist.Plant.Answers;

/// <summary>A truck's wait in minutes with one standard uncertainty.</summary>
public sealed record YardWaitAnswer(double ArrivesMinutes, double WaitMinutes, double StandardUncertaintyMinutes);

/// <summary>A queue forecast: every truck still to be served, when the yard is clear, and the most trucks an hour. Reckoned.</summary>
public sealed record YardAnswer(IReadOnlyList<YardWaitAnswer> Waits, double ClearAfterMinutes, double TrucksPerHour)
{
    /// <summary>The forecast of a posed yard, or what is wrong with it.</summary>
    public static Parsed<YardAnswer> To(YardSpec spec) => YardModel.Forecast(spec) switch
    {
        YardForecast forecast => Parsing.Got(Of(forecast)),
        NoYardForecast none => Parsing.Failed<YardAnswer>([.. none.Reasons.Select(r => Fault.Told("$", r))]),
        var other => throw new InvalidOperationException($"A forecast ended as {other.GetType().Name}."),
    };

    /// <summary>A forecast as an answer.</summary>
    public static YardAnswer Of(YardForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return new([.. forecast.Waits.Select(w => new YardWaitAnswer(w.Arrives, w.Minutes, w.StandardUncertainty))], forecast.ClearAfterMinutes, forecast.TrucksPerHour);
    }
}
