using System.Globalization;
using BakeInsights.Inference;
using BakeInsights.TestKit;
using MathNet.Numerics.LinearAlgebra;
using Microsoft.Data.Sqlite;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The query of docs/long-journals.md, run by SQLite on the demo's canonical CSV, gives the sums of the same fit.</summary>
public class DatabaseSumsTests
{
    private const double Agreement = 1e-9;

    [Fact]
    public void The_sums_of_the_query_give_the_coefficients_and_errors_of_the_fit()
    {
        var sums = Query();
        var products = Matrix<double>.Build.DenseOfArray(new[,]
        {
            { sums["n"], sums["t"], sums["h"] }, { sums["t"], sums["tt"], sums["th"] }, { sums["h"], sums["th"], sums["hh"] },
        });
        var withResult = Vector<double>.Build.DenseOfArray([sums["y"], sums["ty"], sums["hy"]]);
        var coefficients = products.Solve(withResult);
        var variance = (sums["yy"] - coefficients.DotProduct(withResult)) / (sums["n"] - coefficients.Count);
        var errors = (variance * products.Inverse().Diagonal()).PointwiseSqrt();

        var fit = Fit();

        Assert.Equal(fit.N, sums["n"]);
        for (var i = 0; i < coefficients.Count; i++)
        {
            Assert.Equal(fit.Terms[i].Estimate, coefficients[i], Agreement);
            Assert.Equal(fit.Terms[i].StandardError, errors[i], Agreement);
        }
    }

    private static RunningFit Fit()
    {
        var sums = new RunningSums(["intercept", "dough_temperature", "hydration"]);
        foreach (var bake in Journal.Read(Repository.Path("data-demo/millpond-lane")).Bakes)
        {
            if (RiseTime.IsWithinTheLine(bake) && bake.RiseOutcome != RiseOutcome.Stopped
                && bake[BakeColumns.DoughTemp] is { } dough && bake[BakeColumns.Flour] is { } flour && bake[BakeColumns.Water] is { } water
                && bake[BakeColumns.Rise] is { } rise)
            {
                sums.Add([1, dough - ModelAnswer.CentreTemperatureC, (100 * water / flour) - ModelAnswer.CentreHydrationPct], Math.Log(rise));
            }
        }

        return sums.Fit().Value;
    }

    private static Dictionary<string, double> Query()
    {
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        Load(connection);
        using var command = connection.CreateCommand();
        command.CommandText = PageQuery();
        using var row = command.ExecuteReader();
        Assert.True(row.Read());
        return Enumerable.Range(0, row.FieldCount).ToDictionary(row.GetName, row.GetDouble, StringComparer.Ordinal);
    }

    private static string PageQuery() =>
        File.ReadAllText(Repository.Path("docs/long-journals.md")).Split("```sql", 2)[1].Split("```", 2)[0];

    // The demo's canonical cells hold neither quotes nor commas in the columns that the query reads.
    private static void Load(SqliteConnection connection)
    {
        var written = new StringWriter(CultureInfo.InvariantCulture);
        JournalReading.Of(Repository.Path("data-demo/millpond-lane"), written);
        var lines = written.ToString().ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var header = lines[0].Split(',');
        var names = header.Union([BakeColumns.Cold.Name, BakeColumns.RiseOutcome.Name]);
        Run(connection, $"create table bakes ({string.Join(", ", names.Select(name => $"{name} {(name is "notes" or "rise_outcome" ? "text" : "numeric")}"))})", []);
        foreach (var line in lines.Skip(1))
        {
            var cells = line.Split(',', header.Length);
            Run(connection, $"insert into bakes ({lines[0]}) values ({string.Join(", ", cells.Select((_, place) => $"nullif($c{place}, '')"))})", cells);
        }
    }

    private static void Run(SqliteConnection connection, string text, string[] cells)
    {
        using var command = connection.CreateCommand();
        command.CommandText = text;
        foreach (var (place, cell) in cells.Index())
        {
            command.Parameters.AddWithValue($"$c{place}", cell);
        }

        command.ExecuteNonQuery();
    }
}
