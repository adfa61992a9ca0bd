using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Evengrist.Records.Model;

public sealed class PostgresContext(DbContextOptions<PostgresContext> options) : MillContext(options)
{
    internal static PostgresContext On(string connection) => new(new DbContextOptionsBuilder<PostgresContext>().UseNpgsql(connection).Options);

    /// <summary>Lets the migrations tool make the context; no database is opened.</summary>
    public sealed class AtDesignTime : IDesignTimeDbContextFactory<PostgresContext>
    {
        public PostgresContext CreateDbContext(string[] args) => On("Host=localhost;Database=design");
    }
}
