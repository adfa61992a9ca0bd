namespace Evengrist.Ledger;

/// <summary>Refuses starts a sweep cannot walk from, before anything is touched.</summary>
internal static class Starts
{
    public static void Check(ParentRows rows, ReadOnlySpan<int> parcels, ReadOnlySpan<double> fractions, double most, double least)
    {
        if (parcels.Length != fractions.Length)
        {
            throw new ArgumentException($"{parcels.Length} parcels with {fractions.Length} fractions.", nameof(fractions));
        }

        if (!(least >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(least), least, "The least total to keep must be 0 or more.");
        }

        for (var i = 0; i < parcels.Length; i++)
        {
            if (parcels[i] < 0 || parcels[i] >= rows.Count)
            {
                throw new ArgumentOutOfRangeException(nameof(parcels), parcels[i], $"There are {rows.Count} parcels, numbered from 0.");
            }

            if (!(fractions[i] >= 0 && fractions[i] <= most))
            {
                var range = most == 1 ? "between 0 and 1" : "0 or more";
                throw new ArgumentOutOfRangeException(nameof(fractions), fractions[i], $"A fraction must be {range}.");
            }
        }
    }
}
