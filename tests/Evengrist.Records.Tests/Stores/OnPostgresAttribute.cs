using System.Reflection;
using Xunit.Sdk;

namespace Evengrist.Records.Tests.Stores;

/// <summary>Runs a theory on PostgreSQL, or skips that half by name where its programs are not installed.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class OnPostgresAttribute : DataAttribute
{
    public OnPostgresAttribute() => Skip = PostgresCluster.Missing;

    public override IEnumerable<object[]> GetData(MethodInfo testMethod) => [[Store.Postgres]];
}
