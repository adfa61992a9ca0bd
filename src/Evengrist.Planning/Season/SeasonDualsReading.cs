using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Reads the duals of a linear answer: what one more of each saves.</summary>
internal static class SeasonDualsReading
{
    // A dual is the change of cost for one more on a row's right side. A wheat row's right side is less what comes, so one more t saves the dual itself;
    // a flour row's right side is what is wanted, so one more t of flour saves the dual; a limit row of one more t·unit needs one less.
    public static SeasonDuals Of(SeasonModel model, LinearAnswer answer)
    {
        var (spec, duals) = (model.Spec, answer.RowDuals);
        double At(int row) => row < 0 ? 0 : duals[row];
        IEnumerable<(int I, int T)> Each(int count) => Enumerable.Range(0, count).SelectMany(i => Enumerable.Range(0, spec.Periods.Count).Select(t => (i, t)));
        return new SeasonDuals(
            [.. Each(model.Wheats.Length).Select(x => new WheatWorth(model.Wheats[x.I].Code, x.T, At(model.WheatRow[x.I, x.T])))],
            [.. model.Limits.Select(l => new LimitWorth(spec.Flours[l.Flour].Code, l.Period, l.Side.Limit.What, l.Side.IsLeast, At(l.Row))).Where(l => l.PerTonneUnit != 0)],
            [.. Each(spec.Units.Count).Select(x => new UnitWorth(spec.Units[x.I].Code, x.T, -At(model.HoursRow[x.I, x.T])))],
            [.. Each(spec.Flours.Count).Select(x => new FlourWorth(spec.Flours[x.I].Code, x.T, At(model.FlourRow[x.I, x.T])))],
            [.. Each(spec.Homes.Count).Select(x => new HomeWorth(spec.Homes[x.I].Code, x.T, -At(model.HomeRow[x.I, x.T])))])
        {
            Reliefs = [.. model.Limits.SelectMany(l => l.Caps.Select((row, step) => new ReliefWorth(spec.Flours[l.Flour].Code, l.Period, l.Side.Limit.What, l.Side.IsLeast, step, -At(row)))).Where(r => r.PerTonneUnit != 0)],
            CarryOut = [.. spec.CarryOut.Select((c, i) => new CarryOutWorth(c.WheatClass, At(model.CarryOutRow[i]))).Where(c => c.PerTonne != 0)],
        };
    }
}
