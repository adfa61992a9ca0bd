using System.Reflection;
using Xunit.Sdk;

namespace Evengrist.Records.Tests.Stores;

[AttributeUsage(AttributeTargets.Method)]
public sealed class OnSqliteAttribute : DataAttribute
{
    public override IEnumerable<object[]> GetData(MethodInfo testMethod) => [[Store.Sqlite]];
}
