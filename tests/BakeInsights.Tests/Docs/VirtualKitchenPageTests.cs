using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The page on the virtual kitchen prints every number that the kitchen starts from.</summary>
public class VirtualKitchenPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.Path("docs/virtual-kitchen.md"));

    public static TheoryData<string> Parts =>
    [
        nameof(VirtualKitchen.Truth), nameof(VirtualKitchen.Climate), nameof(VirtualKitchen.Practice), nameof(VirtualKitchen.Oven),
        nameof(VirtualKitchen.Hands), nameof(VirtualKitchen.Instruments), nameof(VirtualKitchen.Habits), nameof(VirtualKitchen.Panel),
    ];

    [Theory]
    [MemberData(nameof(Parts))]
    public void Page_prints_every_number_of_a_part(string part)
    {
        var settings = typeof(VirtualKitchen).GetProperty(part)!.GetValue(VirtualKitchen.Usual)!;
        var rows = settings.GetType().GetProperties()
            .Where(property => property.SetMethod is not null && property.GetMethod is { IsStatic: false })
            .Select(property => (property.Name, Text: Printed(property.GetValue(settings))))
            .Where(row => row.Text is not null)
            .ToList();

        Assert.Contains($"| `{settings.GetType().Name}` | default | source |", Page, StringComparison.Ordinal);
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Contains($"| `{row.Name}` | {row.Text} |", Page, StringComparison.Ordinal));
    }

    private static string? Printed(object? value) => value switch
    {
        double number => Text(number),
        int number => number.ToString(CultureInfo.InvariantCulture),
        KitchenRange range => $"{Text(range.Low)} to {Text(range.High)}",
        _ => null,
    };

    private static string Text(double number) => Math.Round(number, 4).ToString(CultureInfo.InvariantCulture);
}
