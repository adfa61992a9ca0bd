namespace Evengrist.Season.Futures;

/// <summary>How a mill stands in one period of a future, as far as it is believed: what it decides by. All by number, in the order of the frame.</summary>
/// <param name="Period">The period.</param>
/// <param name="Lying">What lies there of each wheat, with what has come in the period.</param>
/// <param name="Wanted">Flour that the period wants, t: its demand, and what is to be made good of the flour in store.</param>
/// <param name="BoughtTonnes">What has been bought of each offer so far, t.</param>
/// <param name="Offered">What each offer would bring in this period, as it is believed; null where it is not on offer.</param>
public sealed record FutureStand(
    int Period, IReadOnlyList<(double Tonnes, double MoisturePercent, IReadOnlyList<double> Believed)> Lying, IReadOnlyList<double> Wanted, IReadOnlyList<double> BoughtTonnes, IReadOnlyList<IReadOnlyList<double>?> Offered);

/// <summary>What is decided for one period.</summary>
/// <param name="Bought">t of each offer, by number of the offer.</param>
/// <param name="Drawn">t of wheat into flour, by numbers of both.</param>
public sealed record FutureDecision(IReadOnlyList<(int Offer, double Tonnes)> Bought, IReadOnlyList<(int Wheat, int Flour, double Tonnes)> Drawn);
