namespace Evengrist.Ledger;

/// <summary>Look-up in lists that are kept in the order of fact numbers.</summary>
internal static class Sorted
{
    /// <summary>Position of the item with the number; −1 where there is none.</summary>
    public static int FindSorted<T>(this List<T> list, FactId number, Func<T, FactId> id)
    {
        int low = 0, high = list.Count - 1;
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var order = id(list[middle]).CompareTo(number);
            if (order == 0)
            {
                return middle;
            }

            (low, high) = order < 0 ? (middle + 1, high) : (low, middle - 1);
        }

        return -1;
    }
}
