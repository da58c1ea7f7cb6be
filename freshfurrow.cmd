@echo off
rem Starts freshfurrow; builds it first when it is not built yet. Needs a JDK 17 or later and Maven.
rem After a change of the sources, delete the folder cli\target to have it built again.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%cli\target\freshfurrow.jar"
set "ARCHIVE=%HOME_DIR%cli\target\freshfurrow.jsa"
set "READY=%HOME_DIR%cli\target\freshfurrow.ready"

set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if "%JAVA%"=="java" where /q java || (
    echo freshfurrow needs Java 17 or later; install a JDK or set JAVA_HOME. 1>&2
    exit /b 1
)

rem The jar and the archive of its classes were found good when the file ready was written; it holds the size of the jar.
set "SIZE="
set "GOOD="
if exist "%JAR%" for %%I in ("%JAR%") do set "SIZE=%%~zI"
if exist "%READY%" set /p GOOD=<"%READY%"
set "BUILD="
if not defined SIZE set "BUILD=1"
if not "%SIZE%"=="%GOOD%" set "BUILD=1"
if not exist "%ARCHIVE%" set "BUILD=1"
if defined BUILD (
    "%JAVA%" "%HOME_DIR%launcher\Build.java" "%HOME_DIR%." <nul 1>&2
    if errorlevel 1 exit /b 1
)

"%JAVA%" "@%HOME_DIR%launcher\java.options" -XX:SharedArchiveFile="%ARCHIVE%" -jar "%JAR%" %*
exit /b %errorlevel%
