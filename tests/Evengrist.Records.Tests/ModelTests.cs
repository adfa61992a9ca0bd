using Evengrist.Records.Model;
using Evengrist.Records.Tables;
using Microsoft.EntityFrameworkCore;

namespace Evengrist.Records.Tests;

public sealed class ModelTests
{
    public static TheoryData<string> Engines => ["sqlite", "postgres"];

    [Theory, MemberData(nameof(Engines))]
    public void Model_ComparedWithItsMigrations_HasNoPendingChanges(string engine)
    {
        using MillContext context = engine == "sqlite" ? SqliteContext.On("Data Source=none.db") : PostgresContext.On("Host=none");
        Assert.False(context.Database.HasPendingModelChanges());
    }

    [Theory, MemberData(nameof(Engines))]
    public void Model_ComparedWithTheTablesWrittenToByHand_HasTheSameColumns(string engine)
    {
        using MillContext context = engine == "sqlite" ? SqliteContext.On("Data Source=none.db") : PostgresContext.On("Host=none");
        foreach (var table in FactTable.All)
        {
            var entity = context.Model.GetEntityTypes().Single(e => e.GetTableName() == table.Name);
            Assert.Equal(entity.GetProperties().Select(p => p.GetColumnName()).Order(), table.Columns.Order());
        }
    }
}
