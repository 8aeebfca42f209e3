Attribute VB_Name = "OrbwrightMacros"
' Macros for spreadsheets that run VBA: post a whole design, and get a table of its sheet as cells.
'
' Install: in the VBA editor, File > Import File. No reference has to be set.
' Use: write the design (JSON) into one cell, select it, and run PostDesign. The whole sheet appears on a new page, a
' row for each value with the JSON pointer to it. In a cell, =ORBWRIGHT(A1, "/angles/faces/0/bladeTilt") gives one value.
' A table begins with a row for each STOP: do not cut this. Beside single values show
' =ORBWRIGHT(A1, "/findings/0/severity"), which is STOP if there is any.
'
' The module may not bear the name of the function: ORBWRIGHT in a cell would then show #NAME?.
' It runs on Windows. A Mac has no MSXML, and every answer there begins with ERROR. On a Mac use orbwright.bas in
' LibreOffice, orbwright-cells.js in a spreadsheet in the web, or sheet.sh in a terminal. The service hands out all of them.
'
' The numbers say what fits, not what is safe: the machine's manual, local rules and instruction come first.
Option Explicit

' Where the service answers.
Private Const SERVICE As String = "http://localhost:8080"
' The key, where the service asks for one. Whoever has the spreadsheet can read it.
Private Const KEY As String = ""

' One value of a design's sheet, by its JSON pointer; or what is wrong, in a text that begins with ERROR.
Public Function ORBWRIGHT(ByVal Design As String, ByVal Pointer As String) As Variant
    Dim Text As String, Position As Long, Cells As Variant
    Text = PostedTable(Design, "sheet")
    Position = 1
    Do While Position <= Len(Text)
        Cells = NextRow(Text, Position)
        If UBound(Cells) > 0 Then
            If Cells(0) = Pointer Then
                ORBWRIGHT = AsValue(CStr(Cells(1)))
                Exit Function
            End If
        ElseIf Left$(CStr(Cells(0)), 6) = "ERROR:" Then
            ORBWRIGHT = CStr(Cells(0))
            Exit Function
        End If
    Loop
    ORBWRIGHT = "ERROR: there is no " & Pointer & " in the answer"
End Function

' Posts the design in the selected cell and writes the whole sheet onto a new page.
Public Sub PostDesign()
    WriteTable CStr(ActiveCell.Value), "sheet"
End Sub

' Writes a table (angles, segments, cuts, bands, findings, sheet and so on) onto a new page.
Public Sub WriteTable(ByVal Design As String, ByVal Table As String)
    Dim Text As String, Position As Long, Cells As Variant, Y As Long, X As Long, Page As Object
    Text = PostedTable(Design, Table)
    Position = 1
    Set Page = ActiveWorkbook.Worksheets.Add
    Do While Position <= Len(Text)
        Cells = NextRow(Text, Position)
        For X = 0 To UBound(Cells)
            If Not IsNumber(CStr(Cells(X))) Then Page.Cells(Y + 1, X + 1).NumberFormat = "@"
            Page.Cells(Y + 1, X + 1).Value = AsValue(CStr(Cells(X)))
        Next
        Y = Y + 1
    Loop
End Sub

' Posts a design and returns a table as comma separated values, or what is wrong in a line that begins with ERROR.
Private Function PostedTable(ByVal Design As String, ByVal Table As String) As String
    Dim Request As Object
    On Error GoTo NoAnswer
    Set Request = CreateObject("MSXML2.ServerXMLHTTP.6.0")
    Request.Open "POST", SERVICE & "/v1/table/" & Table & "?errors=text", False
    Request.setRequestHeader "Content-Type", "application/json; charset=utf-8"
    If KEY <> "" Then Request.setRequestHeader "X-API-Key", KEY
    Request.send Design
    PostedTable = Request.responseText
    Exit Function
NoAnswer:
    PostedTable = "ERROR: no answer from " & SERVICE
End Function

' The cells of the row of comma separated values (RFC 4180) at a position, which is moved to the next row.
Private Function NextRow(ByRef Text As String, ByRef Position As Long) As Variant
    Dim Cells() As String, Cell As String, Quoted As Boolean, C As String, Count As Long
    Do While Position <= Len(Text)
        C = Mid$(Text, Position, 1)
        Position = Position + 1
        If C = """" Then
            If Quoted And Mid$(Text, Position, 1) = """" Then
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
        ElseIf C = Chr$(10) And Not Quoted Then
            Exit Do
        ElseIf Quoted Or C <> Chr$(13) Then
            Cell = Cell & C
        End If
    Loop
    ReDim Preserve Cells(Count)
    Cells(Count) = Cell
    NextRow = Cells
End Function

' A number whatever the spreadsheet's language is; a text as it is.
Private Function AsValue(ByVal Text As String) As Variant
    If IsNumber(Text) Then
        AsValue = Val(Text)
    Else
        AsValue = Text
    End If
End Function

' Whether a text is a number as the service writes them: digits, with a decimal point among them, or a minus before.
Private Function IsNumber(ByVal Text As String) As Boolean
    Dim I As Long, C As String, Digits As Long, Points As Long
    For I = 1 To Len(Text)
        C = Mid$(Text, I, 1)
        If InStr("0123456789", C) > 0 Then
            Digits = Digits + 1
        ElseIf C = "." And Digits > 0 And Points = 0 Then
            Points = 1
        ElseIf C <> "-" Or I > 1 Then
            Exit Function
        End If
    Next
    IsNumber = Digits > 0 And Right$(Text, 1) <> "."
End Function
