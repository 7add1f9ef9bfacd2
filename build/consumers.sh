#!/usr/bin/env bash
# Packs the library and uses the package as strangers do, in folders of their own outside the repository:
# - a new console project runs the readme's first block, unchanged;
# - the sample is built on the packages instead of the sources, and does what the hobbyist's guide says;
# - a program that runs every example of the documents and reads the readme's and the golden JSON files answers the same, byte for
#   byte, on the net10.0 and the netstandard2.0 build, and compiled ahead of time where a linker is there.
# With --netframework that program also runs on .NET Framework, or on Mono where there is no Windows.
# A new room is covered by the example in its readme; a new document by its golden file and a line in tests/Consumers/Files.cs.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap '[ -z "${aot:-}" ] || kill "$aot" 2> /dev/null || true; rm -rf "$work"' EXIT
export LC_ALL=C

build/pack.sh "$work/feed" > "$work/pack.log" || { cat "$work/pack.log" >&2; exit 1; }
version=$(basename "$work"/feed/MarineService.Core.*.nupkg .nupkg | sed 's/^MarineService\.Core\.//')

build/readme-consumer.sh "$work/feed"

mkdir "$work/consumers"
cp -r tests/Consumers/. "$work/consumers"
cp -r tests/MarineService.Core.Tests/Documents/v1 "$work/consumers/golden"
examples=$(dotnet run build/list-examples.cs -- "$work/consumers")

# A private package folder: the shared one keeps the first package of a version that it ever saw.
cat > "$work/consumers/nuget.config" <<'CONFIG'
<configuration>
  <config><add key="globalPackagesFolder" value="../packages" /></config>
  <packageSources><add key="packed" value="../feed" /></packageSources>
  <packageSourceMapping>
    <packageSource key="packed"><package pattern="MarineService.*" /></packageSource>
    <packageSource key="nuget.org"><package pattern="*" /></packageSource>
  </packageSourceMapping>
</configuration>
CONFIG

compile() { # build or publish, project, further options
    dotnet "$1" "$work/consumers/$2" -c Release --nologo -v quiet -clp:NoSummary -p:MarineServiceVersion="$version" "${@:3}"
}

answers() { # name, expected build or nothing, command
    # .NET Framework names the parameter of a refused argument on a line of its own.
    "${@:3}" "$work/consumers" 2> "$work/$1.build" | tr -d '\r' | sed -z "s/\nParameter name: \([A-Za-z]*\)/ (Parameter '\1')/g" > "$work/$1.out" || { cat "$work/$1.out" "$work/$1.build" >&2; exit 1; }
    grep -qxF -- "$2" <(tr -d '\r' < "$work/$1.build") || { echo "$1 loaded '$(cat "$work/$1.build")', not '$2'" >&2; exit 1; }
    cmp "$work/Net10.out" "$work/$1.out" || { diff "$work/Net10.out" "$work/$1.out" | head -n 20 >&2; exit 1; }
}

# The native compiler takes longest; it works while the others do.
aot=
if command -v clang > /dev/null || command -v gcc > /dev/null; then
    linker=()
    command -v clang > /dev/null || linker=(-p:CppCompilerAndLinker=gcc)
    compile publish Aot -o "$work/aot" "${linker[@]}" > "$work/aot.log" 2>&1 &
    aot=$!
fi

compile build Net10
answers Net10 ".NETCoreApp,Version=v10.0" dotnet "$work/consumers/Net10/bin/Release/net10.0/Consumer.dll"
compile build NetStandard
answers NetStandard ".NETStandard,Version=v2.0" dotnet "$work/consumers/NetStandard/bin/Release/net8.0/Consumer.dll"
echo "consumers agree: net10.0, netstandard2.0 ($examples, $(wc -l < "$work/Net10.out") lines)"

# The sample as a stranger would build it: its own sources, the packages instead of the projects.
cp -r samples/RowingClub "$work/RowingClub"
rm -rf "$work"/RowingClub/{bin,obj,packages.lock.json}
sed -i 's#<ProjectReference Include="../../src/\(MarineService\.[A-Za-z]*\)/.*" />#<PackageReference Include="\1" />#' "$work/RowingClub/RowingClub.csproj"
sed "s#</Project>#<ItemGroup><PackageVersion Include=\"MarineService.Core\" Version=\"$version\" /><PackageVersion Include=\"MarineService.Reports\" Version=\"$version\" /></ItemGroup></Project>#" \
    Directory.Packages.props > "$work/RowingClub/Directory.Packages.props"
cp "$work/consumers/nuget.config" "$work/nuget.config"
sed -i 's#"\.\./#"#' "$work/nuget.config"
dotnet build "$work/RowingClub" -c Release --nologo -v quiet -clp:NoSummary -p:ImplicitUsings=enable -p:Nullable=enable -p:LangVersion=latest
STRANGERS_SAMPLE="$work/RowingClub/bin/Release/net10.0/RowingClub.dll" dotnet test --no-build --project tests/MarineService.Core.Tests -- \
    --filter-method '*ConsoleBlocksTest.EveryConsoleBlock_PrintsWhatTheDocumentSays' > "$work/guide.log" || { cat "$work/guide.log" >&2; exit 1; }
echo "the sample, built on the packages, does what the hobbyist's guide says"

if [ -n "$aot" ]; then
    wait "$aot" || { cat "$work/aot.log" >&2; exit 1; }
    aot=
    answers Aot ".NETCoreApp,Version=v10.0" "$work/aot/Consumer"
    echo "consumers agree: compiled ahead of time"
else
    echo "no clang or gcc here: nothing compiled ahead of time"
fi

if [ "${1:-}" = --netframework ]; then
    compile build NetFramework
    runtime=()
    [ "${OS:-}" = Windows_NT ] || runtime=(mono)
    answers NetFramework ".NETStandard,Version=v2.0" "${runtime[@]}" "$work/consumers/NetFramework/bin/Release/net48/Consumer.exe"
    echo "consumers agree: .NET Framework 4.8 program on $([ ${#runtime[@]} -eq 0 ] && echo Windows || mono --version | head -n 1)"
fi
