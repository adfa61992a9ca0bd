using System.Reflection;
using Evengrist.Records.Model;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Evengrist.Records.Opening;

/// <summary>The versions of the tables this program knows, oldest first, and what a database says of itself.</summary>
internal static class Versions
{
    public const string History = "__EFMigrationsHistory";

    /// <summary>The migrations' own table on SQLite that says one is under way.</summary>
    public const string Lock = "__EFMigrationsLock";

    public static IReadOnlyList<string> Of<T>()
        where T : MillContext => typeof(T).Assembly.GetTypes()
            .Where(t => t.GetCustomAttribute<DbContextAttribute>()?.ContextType == typeof(T))
            .Select(t => t.GetCustomAttribute<MigrationAttribute>()?.Id).OfType<string>()
            .Order(StringComparer.Ordinal).ToArray();

    /// <summary>Whether tables must be made or brought up to date.</summary>
    /// <exception cref="MillCannotOpen">The database is of a newer program.</exception>
    public static bool IsOutdated(IReadOnlyList<string> applied, IReadOnlyList<string> known, string where)
    {
        var newer = applied.Except(known).Order(StringComparer.Ordinal).LastOrDefault();
        return newer is null ? applied.Count < known.Count : throw new MillCannotOpen(
            $"{where} was written by a newer Evengrist (tables of {newer}; this program knows them up to {known[^1]}). Start the newer program, or open a backup made before it. Nothing was changed.");
    }
}
