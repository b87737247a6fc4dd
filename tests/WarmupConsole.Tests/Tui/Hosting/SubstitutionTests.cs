using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Terminal.Gui.App;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Tui.Hosting;

/// <summary>Native code leaves out what the screen library does before the first line of the program; a library that does something else there must be looked at again.</summary>
public class SubstitutionTests
{
    [Fact]
    public void What_is_left_out_is_all_that_the_library_does_when_it_is_loaded()
    {
        MethodInfo eager = Assert.Single(
            typeof(Application).Assembly.GetTypes().SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)),
            method => method.IsDefined(typeof(ModuleInitializerAttribute)));
        XElement type = Assert.Single(XDocument.Parse(Repository.Text("src/WarmupConsole.App/Substitutions.xml")).Descendants("type"));
        XElement method = Assert.Single(type.Elements());
        Assert.Equal(eager.DeclaringType!.FullName, type.Attribute("fullname")!.Value);
        Assert.Equal($"System.Void {eager.Name}()", method.Attribute("signature")!.Value);
        Assert.Empty(eager.GetParameters());
    }
}
