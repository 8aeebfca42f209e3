REM Macros for LibreOffice Calc: post a whole design, and get its sheet or a table of it as cells.
REM
REM Install: Tools > Macros > Organize Macros > Basic, make a module, and paste this file.
REM Use: write the design (JSON) into one cell, select it, and run PostDesign. The whole sheet appears on a new
REM page, a row for each value with the JSON pointer to it. In a cell, =ORBWRIGHT(A1; "/angles/faces/0/bladeTilt")
REM gives one value of the design in A1. A table begins with a row for each STOP: do not cut this. Beside single values
REM show =ORBWRIGHT(A1; "/findings/0/severity"), which is STOP if there is any.
REM
REM The numbers say what fits, not what is safe: the machine's manual, local rules and instruction come first.

Option Explicit

REM Where the service answers.
Const Service = "http://localhost:8080"
REM The key, where the service asks for one. Whoever has the document can read it.
Const Key = ""

REM One value of a design's sheet, by its JSON pointer; or what is wrong, in a text that begins with ERROR.
Function ORBWRIGHT(Design As String, Pointer As String)
    Dim Text As String, Position As Long, Cells
    Text = PostedTable(Design, "sheet")
    Position = 1
    Do While Position <= Len(Text)
        Cells = NextRow(Text, Position)
        If UBound(Cells) > 0 Then
            If Cells(0) = Pointer Then
                ORBWRIGHT = AsValue(Cells(1))
                Exit Function
            End If
        ElseIf Left(Cells(0), 6) = "ERROR:" Then
            ORBWRIGHT = Cells(0)
            Exit Function
        End If
    Loop
    ORBWRIGHT = "ERROR: there is no " & Pointer & " in the answer"
End Function

REM Posts the design in the selected cell and writes the whole sheet onto a new page.
Sub PostDesign
    WriteTable ThisComponent, ThisComponent.CurrentSelection.String, "sheet"
End Sub

REM Writes a table (angles, segments, cuts, bands, findings, sheet and so on) onto a new page of a document.
Sub WriteTable(Document, Design As String, Table As String)
    Dim Name As String, Number As Integer, Text As String, Position As Long, Cells, Y As Long, X As Long, Page
    Text = PostedTable(Design, Table)
    Position = 1
    Number = 1
    Do While Document.Sheets.hasByName(Table & " " & Number)
        Number = Number + 1
    Loop
    Name = Table & " " & Number
    Document.Sheets.insertNewByName(Name, Document.Sheets.Count)
    Page = Document.Sheets.getByName(Name)
    Do While Position <= Len(Text)
        Cells = NextRow(Text, Position)
        For X = 0 To UBound(Cells)
            If IsNumber(Cells(X)) Then
                Page.getCellByPosition(X, Y).Value = Val(Cells(X))
            Else
                Page.getCellByPosition(X, Y).String = Cells(X)
            End If
        Next
        Y = Y + 1
    Loop
End Sub

REM Posts a design and returns a table as comma separated values, or a text that begins with ERROR.
Function PostedTable(Design As String, Table As String) As String
    Dim Content, Command, Argument As New com.sun.star.ucb.PostCommandArgument2
    Dim Broker, Sink, Reader
    On Error Goto NoAnswer
    Broker = CreateUnoService("com.sun.star.ucb.UniversalContentBroker")
    Content = Broker.queryContent(Broker.createContentIdentifier(Service & "/v1/table/" & Table & "?errors=text"))
    Sink = CreateUnoService("com.sun.star.io.Pipe")
    Argument.Source = StreamOf(Design)
    Argument.Sink = Sink
    Argument.MediaType = "application/json"
    Command = CreateUnoStruct("com.sun.star.ucb.Command")
    Command.Name = "post"
    Command.Handle = -1
    Command.Argument = Argument
    Content.execute(Command, 0, CreateUnoListener("Request_", "com.sun.star.ucb.XWebDAVCommandEnvironment"))
    Sink.closeOutput()
    Reader = CreateUnoService("com.sun.star.io.TextInputStream")
    Reader.setInputStream(Sink)
    Reader.setEncoding("UTF-8")
    PostedTable = Reader.readString(Array(), False)
    Exit Function
NoAnswer:
    PostedTable = "ERROR: no answer from " & Service
End Function

REM What a request has besides its body: no dialogs, and the key in a header.
Function Request_getInteractionHandler()
    Request_getInteractionHandler = Nothing
End Function

Function Request_getProgressHandler()
    Request_getProgressHandler = Nothing
End Function

Function Request_getUserRequestHeaders(Address, Method)
    Dim Header As New com.sun.star.beans.StringPair
    Header.First = "X-API-Key"
    Header.Second = Key
    If Key = "" Then
        Request_getUserRequestHeaders = Array()
    Else
        Request_getUserRequestHeaders = Array(Header)
    End If
End Function

REM A stream of a text's bytes.
Function StreamOf(Text As String)
    Dim Pipe, Writer
    Pipe = CreateUnoService("com.sun.star.io.Pipe")
    Writer = CreateUnoService("com.sun.star.io.TextOutputStream")
    Writer.setOutputStream(Pipe)
    Writer.setEncoding("UTF-8")
    Writer.writeString(Text)
    Writer.closeOutput()
    StreamOf = Pipe
End Function

REM The cells of the row of comma separated values (RFC 4180) at a position, which is moved to the next row.
Function NextRow(Text As String, Position As Long)
    Dim Cells(), Cell As String, Quoted As Boolean, C As String, Count As Long
    Do While Position <= Len(Text)
        C = Mid(Text, Position, 1)
        Position = Position + 1
        If C = """" Then
            If Quoted And Mid(Text, Position, 1) = """" Then
                Cell = Cell & C
                Position = Position + 1
            Else
                Quoted = Not Quoted
            End If
        ElseIf C = "," And Not Quoted Then
            ReDim Preserve Cells(Count)
            Cells(Count) = Cell
            Count = Count + 1
            Cell = ""
        ElseIf C = Chr(10) And Not Quoted Then
            Exit Do
        ElseIf Quoted Or C <> Chr(13) Then
            Cell = Cell & C
        End If
    Loop
    ReDim Preserve Cells(Count)
    Cells(Count) = Cell
    NextRow = Cells
End Function

REM A number in the spreadsheet's own form, whatever its language is; a text as it is.
Function AsValue(Text As String)
    If IsNumber(Text) Then
        AsValue = Val(Text)
    Else
        AsValue = Text
    End If
End Function

REM Whether a text is a number as the service writes them: digits, with a decimal point among them, or a minus before.
Function IsNumber(ByVal Text As String) As Boolean
    Dim I As Long, C As String, Digits As Long, Points As Long
    For I = 1 To Len(Text)
        C = Mid(Text, I, 1)
        If InStr("0123456789", C) > 0 Then
            Digits = Digits + 1
        ElseIf C = "." And Digits > 0 And Points = 0 Then
            Points = 1
        ElseIf C <> "-" Or I > 1 Then
            Exit Function
        End If
    Next
    IsNumber = Digits > 0 And Right(Text, 1) <> "."
End Function
