using System.Reflection;
using Microsoft.AspNetCore.Components;

namespace Evengrist.Web.Face;

/// <summary>The rooms in the order of the way of the grain; only those that have a page are shown.</summary>
public static class Rooms
{
    private static readonly Room[] All =
    [
        new("Today", "/", false),
        new("Intake", "/intake", true),
        new("Bins", "/bins", true),
        new("Mix", "/mix", true),
        new("Tempering", "/tempering", true),
        new("Milling", "/milling", true),
        new("Streams", "/streams", true),
        new("Laboratory", "/laboratory", true),
        new("Packing", "/packing", true, Beside: "/dispatch"),
        new("Tracing", "/tracing", true),
        new("Season", "/season", false),
        new("Ledger", "/ledger", false),
    ];

    private static readonly HashSet<string> Routes = [.. typeof(Rooms).Assembly.GetTypes().SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template)];

    /// <summary>The rooms whose page exists in this program, in order.</summary>
    public static IReadOnlyList<Room> Built { get; } = [.. All.Where(r => HasPage(r.Path))];

    /// <summary>Whether this program has a page at a path.</summary>
    public static bool HasPage(string path) => Routes.Contains(path);
}
