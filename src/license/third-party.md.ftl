# What is in the jar and not ours

Made by the build from what each library says of itself; where one names several licences, it may be used under any of
them. <https://spdx.org/licenses/> has their texts. The loader of the jar is Spring Boot's, under Apache-2.0; its starters
only name other libraries.

The typeface in `openpdf-fonts-extra`, Liberation, is under OFL-1.1, whose text lies beside it in that library.

| library | version | licence |
| --- | --- | --- |
<#list dependencyMap as entry>
<#assign library = entry.key>
| `${library.groupId}:${library.artifactId}` | ${library.version} | <#list entry.value as licence>${licence}<#sep> or </#sep></#list> |
</#list>
