//! The objects of a PDF file, each written as soon as it is known.

use std::io::{self, Write};

use flate2::Compression;
use flate2::write::ZlibEncoder;
use pdf_writer::{Chunk, Filter, Obj, Ref, Stream};

/// A PDF file on its way, of which nothing is kept but where its objects begin.
pub(super) struct PdfFile<W> {
    out: W,
    /// Bytes that are written.
    written: u64,
    /// Where each object begins, that of number 1 first; 0 for one that is still to come.
    begins: Vec<u64>,
}

impl<W: Write> PdfFile<W> {
    /// Writes the first line, and one of bytes that are no letters, by which programs see that the file is
    /// not of letters alone (ISO 32000, 7.5.2).
    pub fn begin(out: W) -> io::Result<Self> {
        let mut file = Self {
            out,
            written: 0,
            begins: Vec::new(),
        };
        file.write(b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n")?;
        Ok(file)
    }

    /// The number of an object that is still to be written.
    pub fn reserve(&mut self) -> Ref {
        self.begins.push(0);
        // A file of two thousand million objects is beyond every disk.
        Ref::new(i32::try_from(self.begins.len()).unwrap_or(i32::MAX))
    }

    /// Writes an object.
    pub fn put(&mut self, number: Ref, fill: impl FnOnce(Obj<'_>)) -> io::Result<()> {
        let mut chunk = Chunk::new();
        fill(chunk.indirect(number));
        self.put_chunk(number, &chunk)
    }

    /// Writes an object that holds a row of bytes, packed.
    pub fn put_stream(
        &mut self,
        number: Ref,
        bytes: &[u8],
        describe: impl FnOnce(&mut Stream<'_>),
    ) -> io::Result<()> {
        let mut packer = ZlibEncoder::new(Vec::new(), Compression::default());
        packer.write_all(bytes)?;
        let packed = packer.finish()?;
        let mut chunk = Chunk::with_capacity(packed.len() + 256);
        let mut stream = chunk.stream(number, &packed);
        stream.filter(Filter::FlateDecode);
        describe(&mut stream);
        drop(stream);
        self.put_chunk(number, &chunk)
    }

    fn put_chunk(&mut self, number: Ref, chunk: &Chunk) -> io::Result<()> {
        let place = usize::try_from(number.get() - 1).unwrap_or(usize::MAX);
        if let Some(begin) = self.begins.get_mut(place) {
            *begin = self.written;
        }
        self.write(chunk.as_bytes())
    }

    fn write(&mut self, bytes: &[u8]) -> io::Result<()> {
        self.out.write_all(bytes)?;
        self.written += bytes.len() as u64;
        Ok(())
    }

    /// Writes where every object begins, and which of them is the first to be read and which tells of the
    /// document (ISO 32000, 7.5.4 and 7.5.5). A line of the table has 20 bytes.
    pub fn finish(mut self, root: Ref, info: Ref) -> io::Result<()> {
        let (table, size) = (self.written, self.begins.len() + 1);
        self.write(format!("xref\n0 {size}\n0000000000 65535 f\r\n").as_bytes())?;
        for nth in 0..self.begins.len() {
            // One that was never written is free, and followed by none.
            let line = match self.begins[nth] {
                0 => "0000000000 00000 f\r\n".to_owned(),
                begin => format!("{begin:010} 00000 n\r\n"),
            };
            self.write(line.as_bytes())?;
        }
        let (root, info) = (root.get(), info.get());
        let trailer = format!(
            "trailer\n<< /Size {size} /Root {root} 0 R /Info {info} 0 R >>\nstartxref\n{table}\n%%EOF\n"
        );
        self.write(trailer.as_bytes())?;
        self.out.flush()
    }
}
