namespace Evengrist.Season;

/// <summary>What is wrong with what people have decided.</summary>
internal static class ChoiceFaults
{
    public static void Of(SeasonSpec spec, FaultList faults)
    {
        for (var c = 0; c < spec.Choices.Count; c++)
        {
            var (choice, where) = (spec.Choices[c], $"choice {c}");
            if (double.IsNaN(choice.Most) || !faults.Number($"{where}, least", choice.Least, 0) || choice.Least > choice.Most)
            {
                faults.Add(where, $"it lies from {FaultList.Shown(choice.Least)} to {FaultList.Shown(choice.Most)}.");
            }

            switch (choice)
            {
                case UseChoice use:
                    Into(spec, where, use.Wheat, use.Flour, use.Period, faults);
                    break;
                case ShareChoice share:
                    Into(spec, where, share.Wheat, share.Flour, share.Period, faults);
                    faults.Number($"{where}, share", share.Most, 0, 1);
                    break;
                case BuyChoice buy when spec.Offers.FirstOrDefault(o => o.Code == buy.Offer) is not { } offer:
                    faults.Add(where, $"there is no offer {buy.Offer}.");
                    break;
                case BuyChoice buy when spec.Offers.First(o => o.Code == buy.Offer) is { } offer && (buy.Period < offer.First || buy.Period > offer.Last):
                    faults.Add(where, $"{buy.Offer} cannot be bought in period {buy.Period}, only from {offer.First} to {offer.Last}.");
                    break;
            }
        }
    }

    private static void Into(SeasonSpec spec, string where, string wheatCode, string flourCode, int period, FaultList faults)
    {
        var (wheat, flour) = (spec.AllWheats.FirstOrDefault(w => w.Code == wheatCode), spec.Flours.FirstOrDefault(f => f.Code == flourCode));
        if (wheat is null || flour is null)
        {
            faults.Add(where, wheat is null ? $"there is no wheat {wheatCode}." : $"there is no flour {flourCode}.");
        }
        else if (!SeasonYield.Allows(flour, wheat))
        {
            faults.Add(where, $"{wheatCode} may not go into {flourCode}.");
        }

        WheatFaults.Period(spec, where, period, faults);
    }
}
