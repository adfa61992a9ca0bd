namespace Evengrist.Season;

/// <summary>The rows of a plan by where they belong, for checking it.</summary>
internal sealed class PlanTally
{
    private readonly Dictionary<(string, int), double> stocks = [];
    private readonly Dictionary<(string, int), double> bought = [];
    private readonly Dictionary<(string, int), double> drawn = [];
    private readonly Dictionary<(string, int), PlannedFlour> flours = [];
    private readonly Dictionary<(string, int), PlannedQuality> qualities;
    private readonly Dictionary<string, SeasonWheat> wheats;

    public PlanTally(SeasonPlan plan)
    {
        Plan = plan;
        wheats = plan.Spec.AllWheats.ToDictionary(w => w.Code);
        qualities = plan.Qualities.ToDictionary(q => (q.Wheat, q.Period));
        UsesOf = plan.Uses.ToLookup(u => (u.Flour, u.Period));
        foreach (var use in plan.Uses)
        {
            Positive(use.Tonnes, $"{use.Wheat} into {use.Flour}, period {use.Period}");
            drawn[(use.Wheat, use.Period)] = drawn.GetValueOrDefault((use.Wheat, use.Period)) + use.Tonnes;
        }

        foreach (var purchase in plan.Purchases)
        {
            Positive(purchase.Tonnes, $"{purchase.Offer} bought, period {purchase.Period}");
            bought[(purchase.Offer, purchase.Period)] = bought.GetValueOrDefault((purchase.Offer, purchase.Period)) + purchase.Tonnes;
        }

        foreach (var stock in plan.Stocks)
        {
            Positive(stock.Tonnes, $"{stock.Wheat} in store, period {stock.Period}");
            stocks[(stock.Wheat, stock.Period)] = stock.Tonnes;
        }

        foreach (var flour in plan.Flours)
        {
            flours[(flour.Flour, flour.Period)] = flour;
        }
    }

    public SeasonPlan Plan { get; }

    public SeasonSpec Spec => Plan.Spec;

    public int Periods => Spec.Periods.Count;

    public List<string> Faults { get; } = [];

    public ILookup<(string Flour, int Period), PlannedUse> UsesOf { get; }

    public double Stock(string wheat, int period) => stocks.GetValueOrDefault((wheat, period));

    public double Bought(string offer, int period) => bought.GetValueOrDefault((offer, period));

    public double Drawn(string wheat, int period) => drawn.GetValueOrDefault((wheat, period));

    public PlannedFlour? Flour(string flour, int period) => flours.GetValueOrDefault((flour, period));

    public SeasonWheat Wheat(string code) => wheats[code];

    public (double Moisture, SeasonQuality Quality) Quality(string wheat, int period) =>
        qualities.TryGetValue((wheat, period), out var own) ? (own.MoisturePercent, own.Quality) : (wheats[wheat].MoisturePercent, wheats[wheat].Quality);

    public double YieldOf(string wheat, SeasonFlour flour) => wheats[wheat].YieldOf.TryGetValue(flour.Code, out var own) ? own : flour.Yield + (wheats[wheat].ExtractionPoints / 100);

    private void Positive(double tonnes, string what)
    {
        if (!(tonnes >= 0 && double.IsFinite(tonnes)))
        {
            Faults.Add($"{what}: {tonnes} t.");
        }
    }
}
