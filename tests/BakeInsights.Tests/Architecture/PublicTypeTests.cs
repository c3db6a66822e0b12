using System.Reflection;
using System.Runtime.CompilerServices;
using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Public types are closed to inheritance, and their values do not change.</summary>
public class PublicTypeTests
{
    // The types whose methods change them: one puts a bake together, the other gathers sums.
    private static readonly Type[] Builders = [typeof(BakeDraft), typeof(RunningSums)];

    private static IEnumerable<Type> All =>
        typeof(Bake).Assembly.GetExportedTypes().Concat(typeof(Quantiles).Assembly.GetExportedTypes());

    public static TheoryData<Type> Types => [.. All];

    [Theory]
    [MemberData(nameof(Types))]
    public void Type_is_sealed_static_or_abstract(Type type) => Assert.True(type.IsSealed || type.IsAbstract);

    [Theory]
    [MemberData(nameof(Types))]
    public void No_property_can_be_set_after_the_start(Type type) => Assert.DoesNotContain(
        type.GetProperties(Declared), property => property.SetMethod is { IsPublic: true } setter && !IsInit(setter));

    [Theory]
    [MemberData(nameof(Types))]
    public void No_field_can_be_set_after_the_start(Type type) => Assert.DoesNotContain(
        type.GetFields(Declared | BindingFlags.NonPublic),
        field => field is { IsInitOnly: false, IsLiteral: false } && !type.IsEnum);

    [Fact]
    public void Only_builders_have_methods_that_set() => Assert.Equal(
        Builders,
        All.Where(type => type.GetMethods(Declared).Any(method =>
            method is { IsSpecialName: false, IsStatic: false, Name: not "Deconstruct" }
            && (method.ReturnType == typeof(void) || method.Name == "Set"))));

    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
}
