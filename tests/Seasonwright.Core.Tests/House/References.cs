using System.Reflection;
using System.Reflection.Emit;

namespace Seasonwright.Core.Tests.House;

/// <summary>The types and members that a type's own members speak of: in signatures, fields, locals and instructions.</summary>
internal static class References
{
    private const BindingFlags Own = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> OpCodesByValue = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => (OpCode)field.GetValue(null)!).ToDictionary(code => code.Value);

    public static IEnumerable<Type> TypesOf(Type type)
    {
        var signatures = type.GetInterfaces().Append(type.BaseType)
            .Concat(type.GetFields(Own).Select(field => field.FieldType))
            .Concat(type.GetMethods(Own).Select(method => method.ReturnType))
            .Concat(MethodsOf(type).SelectMany(method => method.GetParameters()).Select(parameter => parameter.ParameterType))
            .Concat(MethodsOf(type).SelectMany(method => method.GetMethodBody()?.LocalVariables.Select(local => local.LocalType) ?? []))
            .OfType<Type>();
        return signatures.Concat(MembersOf(type).SelectMany(member => new[] { member as Type, member.DeclaringType }.OfType<Type>())).SelectMany(Parts).Distinct();
    }

    /// <summary>Members named by the instructions of a type's methods.</summary>
    public static IEnumerable<MemberInfo> MembersOf(Type type) => MethodsOf(type).SelectMany(Instructions);

    private static IEnumerable<MethodBase> MethodsOf(Type type) => type.GetMethods(Own).Concat<MethodBase>(type.GetConstructors(Own));

    private static IEnumerable<MemberInfo> Instructions(MethodBase method)
    {
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        Type[] typeArguments = method.DeclaringType!.IsGenericType ? method.DeclaringType.GetGenericArguments() : [];
        Type[] methodArguments = method.IsGenericMethod ? method.GetGenericArguments() : [];
        for (var at = 0; at < code.Length;)
        {
            var value = code[at] == 0xFE ? (short)(0xFE00 | code[at + 1]) : code[at];
            var operation = OpCodesByValue[value];
            at += operation.Size;
            if (operation.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
                yield return method.Module.ResolveMember(BitConverter.ToInt32(code, at), typeArguments, methodArguments)!;
            at += operation.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(code, at),
                _ => 4,
            };
        }
    }

    /// <summary>A type with its element and its arguments: List&lt;Match[]&gt; speaks of List and of Match.</summary>
    private static IEnumerable<Type> Parts(Type type) =>
        type.HasElementType ? Parts(type.GetElementType()!)
        : type.IsGenericParameter ? []
        : type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type.GetGenericTypeDefinition())
        : [type];
}
