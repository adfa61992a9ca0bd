namespace Evengrist.Ledger.Reckoned;

/// <summary>Parts of a mixture, each parcel once.</summary>
internal static class Parts
{
    /// <summary>Gives every parcel another number.</summary>
    public static void Renumber(this List<Layer> parts, Func<int, int> number)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            parts[i] = parts[i] with { Parcel = number(parts[i].Parcel) };
        }
    }

    /// <summary>Adds grams of a parcel to the part of the same parcel among the last of them, or as a part of its own.</summary>
    public static void Add(this List<Layer> parts, int parcel, double grams, int lookBack = int.MaxValue)
    {
        var end = Math.Max(0, parts.Count - lookBack);
        for (var i = parts.Count - 1; i >= end; i--)
        {
            if (parts[i].Parcel == parcel)
            {
                parts[i] = parts[i] with { Grams = parts[i].Grams + grams };
                return;
            }
        }

        parts.Add(new Layer(parcel, grams));
    }
}
