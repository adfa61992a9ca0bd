namespace Evengrist.Web.Visiting;

/// <summary>What was typed into a form, sent with the address or posted.</summary>
public static class TypedQuery
{
    /// <summary>The text of a field; null where it did not come.</summary>
    public static string? Typed(this IQueryCollection query, string key)
    {
        ArgumentNullException.ThrowIfNull(query);
        return query.TryGetValue(key, out var text) ? text.ToString() : null;
    }

    /// <summary>The text of a field of a form that was posted; null where it did not come, or another form was.</summary>
    /// <param name="request">The request.</param>
    /// <param name="key">The field.</param>
    /// <param name="form">Name of the form; null for whichever was posted.</param>
    public static string? TypedInForm(this HttpRequest request, string key, string? form = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.HasFormContentType && (form is null || request.Form["_handler"] == form) && request.Form.TryGetValue(key, out var text) ? text.ToString() : null;
    }

    /// <summary>The query as text without some of its fields and without the moment looked at.</summary>
    public static string Without(this IQueryCollection query, params string[] fields)
    {
        ArgumentNullException.ThrowIfNull(query);
        return string.Join('&', query.Where(q => q.Key is not "asof" && !fields.Contains(q.Key)).SelectMany(q => q.Value.Select(v => $"{Uri.EscapeDataString(q.Key)}={Uri.EscapeDataString(v ?? "")}")));
    }
}
