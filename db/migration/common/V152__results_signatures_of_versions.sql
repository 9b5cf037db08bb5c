-- Who signed a version. Where its result was opened again, the result itself knows it no longer.
create table result_signature (
  segment_id uuid not null references segment (id),
  number int not null,
  signatory varchar(20) not null,
  name varchar(120) not null,
  signed_at timestamp(3) with time zone not null,
  constraint result_signature_pk primary key (segment_id, number, signatory)
);

insert into result_signature
select segment_id, standing_number, 'REFEREE', referee_signature, referee_signed_at
from segment_result where state = 'OFFICIAL' and referee_signed_at is not null;

insert into result_signature
select segment_id, standing_number, 'ACCOUNTANT', accountant_signature, accountant_signed_at
from segment_result where state = 'OFFICIAL' and accountant_signed_at is not null;
