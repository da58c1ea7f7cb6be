@echo off
rem Starts freshfurrow; builds it first when it is not built yet. Needs a JDK 17 or later and Maven.
rem After a change of the sources, delete the folder cli\target to have it built again.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%cli\target\freshfurrow.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"

if not exist "%JAR%" (
    echo Building freshfurrow; this happens once and takes a minute or two. 1>&2
    pushd "%HOME_DIR%"
    call mvn -q -B -DskipTests -Dspotless.check.skip package 1>&2
    if errorlevel 1 (
        popd
        echo freshfurrow could not be built; see above. 1>&2
        exit /b 1
    )
    popd
)
"%JAVA%" -XX:+UseParallelGC -jar "%JAR%" %*
exit /b %errorlevel%
