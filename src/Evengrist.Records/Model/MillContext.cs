using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Microsoft.EntityFrameworkCore.Metadata.Conventions;

namespace Evengrist.Records.Model;

/// <summary>The one model of both engines. It makes and migrates the tables; facts are read and written by plain commands.</summary>
public abstract partial class MillContext(DbContextOptions options) : DbContext(options)
{
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        ArgumentNullException.ThrowIfNull(configurationBuilder);

        // Rows are never deleted, so nothing looks from a place to what refers to it.
        configurationBuilder.Conventions.Remove<ForeignKeyIndexConvention>();
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        ArgumentNullException.ThrowIfNull(modelBuilder);
        Fact<PlaceRow>(modelBuilder, "place", ("number", "number > 0"), ("capacity", "capacity_g > 0"), ("core", "core_share >= 0 AND core_share <= 1"), ("stirred", "stirred_g >= 0"));
        modelBuilder.Entity<PlaceRow>().HasIndex(p => p.Code).IsUnique();
        modelBuilder.Entity<PlaceRow>().HasAlternateKey(p => p.Number);

        RefersToPlace(Fact<ConnectionRow>(modelBuilder, "connection", ("ends", "from_place <> to_place")), nameof(ConnectionRow.FromPlace), nameof(ConnectionRow.ToPlace));
        RefersToPlace(Fact<MovementRow>(modelBuilder, "movement", ("mass", "mass_g >= 0"), ("time", "until_us >= at_us"), ("ends", "from_place <> to_place")), nameof(MovementRow.FromPlace), nameof(MovementRow.ToPlace));
        RefersToPlace(Fact<ReadingRow>(modelBuilder, "reading", ("what", "what > 0")), nameof(ReadingRow.Place));
        RefersToPlace(Fact<HappeningRow>(modelBuilder, "happening", ("kind", "kind > 0")), nameof(HappeningRow.Place));

        modelBuilder.Entity<SettingRow>().ToTable("setting").HasKey(s => s.Key);
        modelBuilder.Entity<PaperRow>().ToTable("paper", t => t.HasCheckConstraint("ck_paper_version", "version > 0")).HasKey(p => new { p.Kind, p.Code, p.Version });
        foreach (var entity in modelBuilder.Model.GetEntityTypes())
        {
            foreach (var property in entity.GetProperties())
            {
                property.SetColumnName(WordStart().Replace(property.Name, "_$0").ToLowerInvariant());
            }
        }
    }

    private static EntityTypeBuilder<T> Fact<T>(ModelBuilder model, string table, params (string Name, string Holds)[] checks)
        where T : FactRow
    {
        var entity = model.Entity<T>();
        entity.ToTable(table, t =>
        {
            t.HasCheckConstraint($"ck_{table}_id", "id > 0");
            t.HasCheckConstraint($"ck_{table}_corrects", "corrects < id");
            t.HasCheckConstraint($"ck_{table}_source_key", "length(source_key) > 0");
            foreach (var (name, holds) in checks)
            {
                t.HasCheckConstraint($"ck_{table}_{name}", holds);
            }
        });
        entity.HasKey(f => f.Id);
        entity.Property(f => f.Id).ValueGeneratedNever();
        entity.HasIndex(f => new { f.Source, f.SourceKey }).IsUnique();
        entity.HasIndex(f => f.Corrects).IsUnique().HasFilter("corrects IS NOT NULL");
        entity.HasOne<T>().WithMany().HasForeignKey(f => f.Corrects).OnDelete(DeleteBehavior.Restrict);
        return entity;
    }

    private static void RefersToPlace<T>(EntityTypeBuilder<T> entity, params string[] columns)
        where T : class
    {
        foreach (var column in columns)
        {
            entity.HasOne<PlaceRow>().WithMany().HasForeignKey(column).HasPrincipalKey(p => p.Number).OnDelete(DeleteBehavior.Restrict);
        }
    }

    [GeneratedRegex("(?<!^)[A-Z]")]
    private static partial Regex WordStart();
}
