namespace Evengrist.Records.Tests.Stores;

/// <summary>The two engines every test is run on.</summary>
public enum Store
{
    Sqlite,
    Postgres,
}
