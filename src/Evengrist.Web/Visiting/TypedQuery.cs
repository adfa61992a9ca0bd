namespace Evengrist.Web.Visiting;

/// <summary>What was typed into a form that is sent with the address.</summary>
public static class TypedQuery
{
    /// <summary>The text of a field; null where it did not come.</summary>
    public static string? Typed(this IQueryCollection query, string key)
    {
        ArgumentNullException.ThrowIfNull(query);
        return query.TryGetValue(key, out var text) ? text.ToString() : null;
    }
}
