using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Architecture;

/// <summary>Music and Sessions deal in values: once made, nothing public changes.</summary>
public class ImmutabilityTests
{
    private const BindingFlags Everything = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Type[] Types = [.. new[] { typeof(Pitch).Assembly, typeof(LiveState).Assembly }.SelectMany(assembly => assembly.GetExportedTypes())];

    [Fact]
    public void Properties_can_be_set_only_while_a_value_is_made() =>
        Offenders.None("public setters", Properties().Where(HasPublicSetter).Select(Name));

    [Fact]
    public void Fields_are_readonly() =>
        Offenders.None("fields that can change", Types.Where(type => !type.IsEnum)
            .SelectMany(type => type.GetFields(Everything))
            .Where(field => field is { IsInitOnly: false, IsLiteral: false })
            .Select(Name));

    [Fact]
    public void Lists_are_handed_out_for_reading_only() =>
        Offenders.None("lists that a reader could change", Properties().Where(property => IsMutable(property.PropertyType)).Select(Name));

    private static IEnumerable<PropertyInfo> Properties() => Types.SelectMany(type => type.GetProperties(Everything & ~BindingFlags.NonPublic));

    private static bool HasPublicSetter(PropertyInfo property) =>
        property.SetMethod is { IsPublic: true } setter && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static bool IsMutable(Type type) => type.IsArray || (type.IsAssignableTo(typeof(IList)) && type.IsClass);

    private static string Name(MemberInfo member) => $"{member.DeclaringType}.{member.Name}";
}
