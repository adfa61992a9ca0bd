using System.Globalization;
using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>Planning in the background.</summary>
public static class YearWork
{
    /// <summary>Begins some planning.</summary>
    /// <param name="plan">Plans, tells how far it is, and stops when asked to.</param>
    /// <param name="failed">What comes of it where it breaks off.</param>
    public static LongWork<T> Plan<T>(Func<IProgress<SeasonProgress>, CancellationToken, T> plan, Func<SeasonFailed, T> failed)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(failed);
        return LongWork.Begin((tell, stop) => plan(new Telling<SeasonProgress>(at => tell(new WorkStep(Words(at), null))), stop), why => failed(new SeasonFailed(SeasonExit.SolverFailed, why)));
    }

    private static string Words(SeasonProgress at) => double.IsNaN(at.Cost)
        ? at.Doing
        : string.Create(CultureInfo.InvariantCulture, $"{at.Doing}: the best so far costs {at.Cost:N0}, at most {100 * at.Gap:0.000} % above the least");
}
