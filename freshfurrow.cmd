@echo off
rem Starts freshfurrow; builds it first when it is not built yet. Needs a JDK 17 or later and Maven.
rem After a change of the sources, delete the folder cli\target to have it built again.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%cli\target\freshfurrow.jar"
set "READY=%HOME_DIR%cli\target\freshfurrow.ready"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"

rem The file ready holds the size of the jar that was found good.
set "SIZE="
set "GOOD="
if exist "%JAR%" for %%I in ("%JAR%") do set "SIZE=%%~zI"
if exist "%READY%" set /p GOOD=<"%READY%"
set "BUILD="
if not defined SIZE set "BUILD=1"
if not "%SIZE%"=="%GOOD%" set "BUILD=1"
if defined BUILD (
    "%JAVA%" "%HOME_DIR%launcher\Build.java" "%HOME_DIR%." 1>&2
    if errorlevel 1 exit /b 1
)
"%JAVA%" -XX:+UseParallelGC -jar "%JAR%" %*
exit /b %errorlevel%
