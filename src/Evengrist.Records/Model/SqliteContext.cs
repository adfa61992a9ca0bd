using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Evengrist.Records.Model;

public sealed class SqliteContext(DbContextOptions<SqliteContext> options) : MillContext(options)
{
    internal static SqliteContext On(string connection) => new(new DbContextOptionsBuilder<SqliteContext>().UseSqlite(connection).Options);

    /// <summary>Lets the migrations tool make the context; no database is opened.</summary>
    public sealed class AtDesignTime : IDesignTimeDbContextFactory<SqliteContext>
    {
        public SqliteContext CreateDbContext(string[] args) => On("Data Source=design.db");
    }
}
